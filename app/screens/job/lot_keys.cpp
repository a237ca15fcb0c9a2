// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/lot_keys.h"

#include "screens/job/in_hand.h"
#include "theme/sizes.h"

#include <QGridLayout>
#include <QKeyEvent>

using namespace Qt::StringLiterals;

namespace strandbench {

LotKeys::LotKeys(const Surroundings& around, QWidget* parent) : QWidget(parent)
{
    auto* row = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(around.theme.px(sizes::gap));
    m_shown = new FitLabel(around.theme, u"lot_typed"_s, TextRole::Title, this);
    m_shown->setBold(true);
    m_shown->setAlignment(Qt::AlignCenter);
    row->addWidget(m_shown, 1);
    row->addWidget(pad(around), 3);
    setFocusPolicy(Qt::ClickFocus); // takes keys while a lot is keyed in; Tab goes to the controls
    setText({});
}

QWidget* LotKeys::pad(const Surroundings& around)
{
    auto* made = new QWidget(this);
    auto* grid = new QGridLayout(made);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(around.theme.px(sizes::gap));
    const int columns = around.upright ? 4 : 6;
    int count = 0;
    const auto key = [&](const QString& name, const QString& title, auto tapped) {
        auto* one = new TapButton(around.theme, name, TapButton::Kind::Plain, made);
        one->setTitle(title);
        connect(one, &TapButton::clicked, this, tapped);
        grid->addWidget(one, count / columns, count % columns);
        grid->setRowStretch(count / columns, 1);
        grid->setColumnStretch(count % columns, 1);
        ++count;
    };
    for (const QChar sign : u"1234567890-"_s)
        key(sign == u'-' ? u"key_dash"_s : u"key_"_s + sign, QString(sign), [this, sign] { setText(m_text + sign); });
    key(u"key_clear"_s, tr("Clear"), [this] { setText({}); });
    return made;
}

void LotKeys::setText(const QString& text)
{
    if (text.size() > inhand::longestLot)
        return;
    m_text = text;
    m_shown->setText(text.isEmpty() ? u"–"_s : inhand::shownLot(text));
    Q_EMIT textChanged(text);
}

void LotKeys::keyPressEvent(QKeyEvent* event)
{
    const QString text = event->text();
    if (event->key() == Qt::Key_Backspace)
        setText(m_text.chopped(std::min<qsizetype>(1, m_text.size())));
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        Q_EMIT entered();
    else if (!text.isEmpty() && text.at(0).isPrint())
        setText(m_text + text);
    else
        QWidget::keyPressEvent(event);
}

} // namespace strandbench
