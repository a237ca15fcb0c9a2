// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_assumption.h"

#include "theme/sizes.h"

#include <QStackedLayout>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {

SetUpAssumptionScreen::SetUpAssumptionScreen(const Surroundings& around, const SetUpPlace& place,
                                             const AssumptionEntry& entry, QWidget* parent)
    : SetUpScreen(around, u"screen_set_up_assumption"_s, place, parent),
      m_entry(entry),
      m_say(around.words),
      m_rows{place.group, place.page},
      m_number(entry.numberOf(around.bench.assumptions()))
{
    buildFrame(tr("Bench set-up") + u" · "_s + AssumptionWords::name(entry.code), {});
    answers()->stop()->hide();
    auto* holder = new QWidget(this);
    content()->addWidget(holder, 1);
    m_stack = new QStackedLayout(holder);
    auto* figure = new QWidget(holder);
    auto* keys = new QWidget(holder);
    m_stack->addWidget(figure);
    m_stack->addWidget(keys);
    buildFigure(figure);
    buildKeyPad(keys);
    disconnect(answers(), &AnswerBar::backTapped, this, &Screen::backTapped);
    connect(answers(), &AnswerBar::backTapped, this, &SetUpAssumptionScreen::back);
    connect(answers(), &AnswerBar::wayOnTapped, this, &SetUpAssumptionScreen::wayOn);
    refresh();
}

void SetUpAssumptionScreen::buildFigure(QWidget* holder)
{
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(sizes::gap));
    m_stepper = new Stepper(theme(), u"assumption"_s, tr("tap to key it in"), holder);
    connect(m_stepper, &Stepper::stepped, this, &SetUpAssumptionScreen::step);
    connect(m_stepper, &Stepper::figureTapped, this, [this] { openKeyPad(true); });
    column->addWidget(m_stepper, 2);
    const QString source =
        m_entry.published ? tr("A published figure; change it for another material.") : tr("Ours: no source.");
    const QString fallback = m_say.figure(m_entry, m_entry.number(m_entry.byDefault()));
    auto* row = new QBoxLayout(around().upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    row->setSpacing(px(sizes::gap));
    row->addWidget(label(u"assumption_range"_s, TextRole::Body,
                         tr("Allowed: %1. %2 New plans and clocks go by it; what runs keeps its times.")
                             .arg(m_say.range(m_entry), source)),
                   3);
    m_default = key(u"back_to_default"_s, TapButton::Kind::Plain, tr("Back to default"), fallback);
    connect(m_default, &TapButton::clicked, this, [this] {
        m_number = m_entry.number(m_entry.byDefault());
        refresh();
    });
    row->addWidget(m_default, 2);
    if (TapButton* learnt = learntKey())
        row->addWidget(learnt, 2);
    column->addLayout(row, 2);
}

TapButton* SetUpAssumptionScreen::learntKey()
{
    if (m_entry.code != u"spreading_g_per_min"_s)
        return nullptr;
    const auto learnt = around().bench.spreadOf(around().settings.person);
    if (!learnt)
        return nullptr;
    const auto figure = [this](MassRate rate) { return m_say.figure(m_entry, m_entry.number(rate)); };
    //: %1 is a person, %2 a rate: "Mara’s own: 38 g/min"
    TapButton* made =
        key(u"take_learnt"_s, TapButton::Kind::Plain,
            tr("%1’s own: %2").arg(around().settings.person, figure(learnt->rate)),
            tr("the last %1 batches: %2 to %3")
                .arg(QString::number(learnt->batches), figure(learnt->slowest), figure(learnt->quickest)));
    made->setTitleSize({5, 3.6});
    connect(made, &TapButton::clicked, this, [this, rate = learnt->rate] {
        constexpr double tenths = 10; // finer than anybody spreads
        m_number = std::round(m_entry.number(rate) * tenths) / tenths;
        refresh();
    });
    return made;
}

void SetUpAssumptionScreen::buildKeyPad(QWidget* holder)
{
    auto* row = new QBoxLayout(around().upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(px(sizes::gap));
    m_typed = label(u"typed"_s, TextRole::BigFigure, {}, Role::Ink, true);
    m_typed->setAlignment(Qt::AlignCenter);
    m_keys = new KeyPad(theme(), around().upright ? 4 : 6, holder);
    m_keys->setPointSign(words().locale().decimalPoint());
    row->addWidget(m_typed, 1);
    row->addWidget(m_keys, 3);
    connect(m_keys, &KeyPad::textChanged, this, &SetUpAssumptionScreen::showTyped);
}

void SetUpAssumptionScreen::step(int direction)
{
    // From one whole step to the next, so that the figures stay round in the units that are shown.
    const double size = m_say.step(m_entry);
    const double at = m_say.shownNumber(m_entry, m_number) / size;
    const double next = direction > 0 ? std::floor(at + 1e-6) + 1 : std::ceil(at - 1e-6) - 1;
    m_number = std::clamp(m_say.storedNumber(m_entry, next * size), m_entry.number(m_entry.least),
                          m_entry.number(m_entry.most));
    refresh();
}

void SetUpAssumptionScreen::openKeyPad(bool open)
{
    m_typing = open;
    m_stack->setCurrentIndex(open ? 1 : 0);
    m_keys->setText({});
    refresh();
    if (open) {
        showTyped({});
        m_keys->setFocus();
    }
}

void SetUpAssumptionScreen::showTyped(const QString& text)
{
    QString shown = text;
    shown.replace(u'.', words().locale().decimalPoint());
    m_typed->setText((shown.isEmpty() ? u"–"_s : shown) + QChar(0x00a0) + m_say.unit(m_entry));
    answers()->setWayOnEnabled(!text.isEmpty());
}

void SetUpAssumptionScreen::takeTyped()
{
    const Checked<double> read = m_say.parse(m_entry, m_keys->text());
    if (!read)
        return showTrouble(m_say.fault(read.error().front()), {});
    m_number = *read;
    openKeyPad(false);
}

void SetUpAssumptionScreen::wayOn()
{
    if (m_typing)
        return takeTyped();
    const Checked<Assumptions> next = changed(around().bench.assumptions(), m_entry, m_number);
    if (!next)
        return showTrouble(m_say.fault(next.error().front()), {});
    Q_EMIT assumptionsChanged(*next);
}

void SetUpAssumptionScreen::back()
{
    if (m_typing)
        openKeyPad(false);
    else
        Q_EMIT placeWanted(m_rows);
}

void SetUpAssumptionScreen::refresh()
{
    showTrouble({}, {});
    setSentence(m_typing ? tr("Key in the figure") : tr("Change the figure, or put the default back"));
    answers()->setWayOn(m_typing ? tr("Take this figure") : tr("Keep it"));
    const Printed shown = m_say.printed(m_entry, m_number);
    m_stepper->setShown(shown.joined(), {});
    m_default->setEnabled(m_number != m_entry.number(m_entry.byDefault()));
    if (!m_typing)
        answers()->setWayOnEnabled(m_number != m_entry.numberOf(around().bench.assumptions()));
}

} // namespace strandbench
