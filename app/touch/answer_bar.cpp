// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/answer_bar.h"

#include "theme/sizes.h"

#include <QCoreApplication>
#include <QHBoxLayout>

namespace strandbench {

using namespace Qt::StringLiterals;

namespace {

// Shares of the width, after the drawings: 1 : 1.3 : 2.6.
constexpr int backShare = 10;
constexpr int stopShare = 13;
constexpr int wayShare = 26;

} // namespace

AnswerBar::AnswerBar(const Theme& theme, QWidget* parent)
    : QWidget(parent), m_back(nullptr), m_stop(nullptr), m_wayOn(nullptr)
{
    // A child made first is reached first by the keyboard, so they are made in the order in which they stand.
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.px(sizes::gap));
    const auto add = [&](const QString& name, TapButton::Kind kind, int share) {
        auto* button = new TapButton(theme, name, kind, this);
        button->setLeastSize(sizes::target, sizes::answer);
        button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        button->setMinimumWidth(theme.px(sizes::target));
        row->addWidget(button, share);
        return button;
    };
    const auto addBack = [&] { m_back = add(u"answer_back"_s, TapButton::Kind::Plain, backShare); };
    const auto addStop = [&] { m_stop = add(u"answer_stop"_s, TapButton::Kind::Stop, stopShare); };
    const auto addWay = [&] { m_wayOn = add(u"answer_way_on"_s, TapButton::Kind::Way, wayShare); };
    if (theme.hand() == Hand::Right) {
        addBack();
        addStop();
        addWay();
    } else {
        addWay();
        addStop();
        addBack();
    }
    // Without a way on its place stays empty: the other two never move.
    m_wayOn->keepPlaceWhenHidden();
    setFixedHeight(theme.px(sizes::answer));
    m_back->setTitle(QCoreApplication::translate("AnswerBar", "Back"));
    m_stop->setTitle(QCoreApplication::translate("AnswerBar", "Stop and ask"));
    m_stop->setSign(Pictogram::StopHand);
    connect(m_back, &TapButton::clicked, this, &AnswerBar::backTapped);
    connect(m_stop, &TapButton::clicked, this, &AnswerBar::stopTapped);
    connect(m_wayOn, &TapButton::clicked, this, &AnswerBar::wayOnTapped);
}

void AnswerBar::setWayOn(const QString& title, TapButton::Kind kind)
{
    m_wayOn->setKind(kind);
    m_wayOn->setTitle(title);
    m_wayOn->setEnabled(!title.isEmpty());
    m_wayOn->setVisible(!title.isEmpty());
}

void AnswerBar::setWayOnEnabled(bool enabled) { m_wayOn->setEnabled(enabled); }

void AnswerBar::setBackNote(const QString& secondLine) { m_back->setSecondLine(secondLine); }

} // namespace strandbench
