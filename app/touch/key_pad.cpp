// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/key_pad.h"

#include "theme/sizes.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QKeyEvent>

#include <algorithm>
#include <array>
#include <stdexcept>

namespace strandbench {

using namespace Qt::StringLiterals;

namespace {

constexpr TextSize keyTitle{9.0, 4.0};   // mm
constexpr TextSize clearTitle{5.0, 3.4}; // mm: a word in a small key, German among them

// Rows as they stand; 'C' is clear. Digits in the order of a telephone, so that the thumb learns one way.
std::vector<QString> rowsOf(int columns)
{
    switch (columns) {
    case 6:
        return {u"12345."_s, u"67890C"_s};
    case 4:
        return {u"123."_s, u"4560"_s, u"789C"_s};
    case 3:
        return {u"123"_s, u"456"_s, u"789"_s, u".0C"_s};
    default:
        throw std::invalid_argument("KeyPad: columns must be 6, 4 or 3");
    }
}

bool isNumberText(const QString& text)
{
    return text.count(u'.') <= 1 &&
           std::all_of(text.begin(), text.end(), [](QChar c) { return c == u'.' || (c >= u'0' && c <= u'9'); });
}

} // namespace

KeyPad::KeyPad(const Theme& theme, int columns, QWidget* parent) : QWidget(parent), m_theme(theme)
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(theme.px(sizes::gap));
    const std::vector<QString> rows = rowsOf(columns);
    for (int row = 0; row < static_cast<int>(rows.size()); ++row) {
        const QString& keys = rows[static_cast<std::size_t>(row)];
        for (int column = 0; column < columns; ++column) {
            const QChar key = keys[column];
            TapButton* button = nullptr;
            if (key == u'.')
                button = m_point = addKey(u"key_point"_s, u"."_s, key);
            else if (key == u'C')
                button = m_clear = addKey(u"key_clear"_s, QCoreApplication::translate("KeyPad", "Clear"), key);
            else
                m_digits.push_back(button = addKey(u"key_"_s + key, QString(key), key));
            grid->addWidget(button, row, column);
            grid->setColumnStretch(column, 1);
        }
        grid->setRowStretch(row, 1);
    }
    m_point->keepPlaceWhenHidden();
    m_clear->setTitleSize(clearTitle);
    m_point->setAccessibleName(QCoreApplication::translate("KeyPad", "Decimal point"));
    enableKeys();
}

TapButton* KeyPad::addKey(const QString& name, const QString& title, QChar key)
{
    auto* button = new TapButton(m_theme, name, TapButton::Kind::Plain, this);
    button->setTitleSize(keyTitle);
    button->setTitle(title);
    button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    button->setMinimumWidth(m_theme.px(sizes::target));
    connect(button, &TapButton::clicked, this, [this, key] { tapped(key); });
    return button;
}

bool KeyPad::setText(const QString& text)
{
    if (!isNumberText(text) || text.size() > m_longest || (!m_pointAllowed && text.contains(u'.')))
        return false;
    m_text = text;
    enableKeys();
    return true;
}

void KeyPad::setPointAllowed(bool allowed)
{
    m_pointAllowed = allowed;
    m_point->setVisible(allowed); // its place stays empty
    enableKeys();
}

void KeyPad::setLongest(int characters)
{
    m_longest = std::max(1, characters);
    enableKeys();
}

void KeyPad::setZeroInFrontKept(bool kept)
{
    m_zeroKept = kept;
    enableKeys();
}

void KeyPad::setPointSign(const QString& sign)
{
    m_point->setTitle(sign);
    m_point->setAccessibleName(QCoreApplication::translate("KeyPad", "Decimal point"));
}

void KeyPad::tapped(QChar key)
{
    if (key == u'C') {
        change({});
        return;
    }
    QString next = m_text;
    if (key == u'.') {
        if (!m_pointAllowed || next.contains(u'.'))
            return;
        next += next.isEmpty() ? u"0."_s : u"."_s;
    } else if (next == "0"_L1 && !m_zeroKept) {
        next = key; // no leading zero
    } else {
        next += key;
    }
    if (next.size() <= m_longest)
        change(next);
}

void KeyPad::change(const QString& text)
{
    if (text == m_text)
        return;
    m_text = text;
    enableKeys();
    Q_EMIT textChanged(m_text);
}

// A key that would do nothing says so before it is tapped.
void KeyPad::enableKeys()
{
    const int size = static_cast<int>(m_text.size());
    const bool room = size < m_longest || (m_text == "0"_L1 && !m_zeroKept);
    for (TapButton* digit : m_digits)
        digit->setEnabled(room);
    const int pointNeeds = m_text.isEmpty() ? 2 : 1;
    m_point->setEnabled(m_pointAllowed && !m_text.contains(u'.') && size + pointNeeds <= m_longest);
}

void KeyPad::keyPressEvent(QKeyEvent* event)
{
    const QString typed = event->text();
    if (event->key() == Qt::Key_Backspace) {
        change(m_text.chopped(std::min<qsizetype>(1, m_text.size())));
    } else if (event->key() == Qt::Key_Delete) {
        change({});
    } else if (typed == "."_L1 || typed == ","_L1) {
        tapped(u'.');
    } else if (typed.size() == 1 && typed[0] >= u'0' && typed[0] <= u'9') {
        tapped(typed[0]);
    } else {
        QWidget::keyPressEvent(event);
        return;
    }
    event->accept();
}

} // namespace strandbench
