// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/letter_keys.h"

#include "theme/sizes.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QKeyEvent>

#include <algorithm>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t letters = 13; // a page; with space, delete and the next page sixteen keys
constexpr TextSize letterTitle{9.0, 4.0};
constexpr TextSize wordTitle{5.0, 3.4}; // mm: a word in a small key

/// A sentence begins with a large letter.
bool beginsSentence(const QString& text)
{
    const QString before = text.trimmed();
    return before.isEmpty() || (before.endsWith(u'.') && before.size() < text.size());
}

std::vector<QString> sentencePages(const QString& accents)
{
    std::vector<QString> pages{u"ABCDEFGHIJKLM"_s, u"NOPQRSTUVWXYZ"_s, u"0123456789.,-"_s};
    if (!accents.isEmpty())
        pages.insert(pages.begin() + 2, accents.left(static_cast<int>(letters)));
    return pages;
}

} // namespace

LetterKeys::LetterKeys(const Theme& theme, int columns, const QString& accents, QWidget* parent)
    : LetterKeys(theme, columns, sentencePages(accents), false, parent)
{}

LetterKeys::LetterKeys(const Theme& theme, int columns, QWidget* parent)
    : LetterKeys(theme, columns,
                 {u"abcdefghijklm"_s, u"nopqrstuvwxyz"_s, u"{}:|/=%+_;()*"_s, u"0123456789.,-"_s, u"ABCDEFGHIJKLM"_s,
                  u"NOPQRSTUVWXYZ"_s},
                 true, parent)
{}

LetterKeys::LetterKeys(const Theme& theme, int columns, std::vector<QString> pages, bool asShown, QWidget* parent)
    : QWidget(parent), m_theme(theme), m_pages(std::move(pages)), m_asShown(asShown)
{
    if (columns != 8 && columns != 4)
        throw std::invalid_argument("LetterKeys: columns must be 8 or 4");
    setFocusPolicy(Qt::NoFocus);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(theme.px(sizes::gap));
    int at = 0;
    const auto place = [&](TapButton* key) {
        grid->addWidget(key, at / columns, at % columns);
        grid->setColumnStretch(at % columns, 1);
        grid->setRowStretch(at / columns, 1);
        ++at;
    };
    for (std::size_t i = 0; i < letters; ++i) {
        m_letters.push_back(addKey(u"letter_%1"_s.arg(i)));
        m_letters.back()->setTitleSize(letterTitle);
        m_letters.back()->keepPlaceWhenHidden();
        connect(m_letters.back(), &TapButton::clicked, this, [this, i] { tapped(i); });
        place(m_letters.back());
    }
    place(m_space = addKey(u"letter_space"_s));
    place(m_delete = addKey(u"letter_delete"_s));
    place(m_next = addKey(u"letter_page"_s));
    //: short: a key of 20 mm
    m_space->setTitle(QCoreApplication::translate("LetterKeys", "Space"));
    //: short: a key of 20 mm; takes the last letter away
    m_delete->setTitle(QCoreApplication::translate("LetterKeys", "Erase"));
    connect(m_space, &TapButton::clicked, this, [this] { type(u" "_s); });
    connect(m_delete, &TapButton::clicked, this,
            [this] { change(m_text.chopped(std::min<qsizetype>(1, m_text.size()))); });
    connect(m_next, &TapButton::clicked, this, [this] {
        m_page = (m_page + 1) % m_pages.size();
        showPage();
    });
    showPage();
}

TapButton* LetterKeys::addKey(const QString& name)
{
    auto* key = new TapButton(m_theme, name, TapButton::Kind::Plain, this);
    key->setTitleSize(wordTitle);
    key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    key->setMinimumWidth(m_theme.px(sizes::target));
    return key;
}

void LetterKeys::showPage()
{
    const QString& page = m_pages[m_page];
    for (std::size_t i = 0; i < letters; ++i) {
        const bool there = static_cast<qsizetype>(i) < page.size();
        m_letters[i]->setVisible(there);
        if (there)
            m_letters[i]->setTitle(QString(page.at(static_cast<qsizetype>(i))));
    }
    const QString& next = m_pages[(m_page + 1) % m_pages.size()];
    // Named by what it leads to: the ends of a row in order, the first ones of the accents.
    const bool inOrder =
        next.front().isLetterOrNumber() && next.front() < QChar(0x80) && next.size() == static_cast<qsizetype>(letters);
    m_next->setTitle(!inOrder               ? next.left(3)
                     : next.front() == u'0' ? u"0–9"_s
                                            : QString(next.front()) + u'–' + next.back());
}

void LetterKeys::tapped(std::size_t key)
{
    const QString letter(m_pages[m_page].at(static_cast<qsizetype>(key)));
    type(m_asShown || beginsSentence(m_text) ? letter : letter.toLower());
}

void LetterKeys::type(const QString& text) { change(m_text + text); }

void LetterKeys::change(const QString& text)
{
    const QString next = text.left(m_longest);
    if (next == m_text)
        return;
    m_text = next;
    Q_EMIT textChanged(m_text);
}

void LetterKeys::setText(const QString& text) { m_text = text.left(m_longest); }

void LetterKeys::setLongest(int characters)
{
    m_longest = std::max(1, characters);
    m_text = m_text.left(m_longest);
}

void LetterKeys::keyPressEvent(QKeyEvent* event)
{
    const QString typed = event->text();
    constexpr Qt::KeyboardModifiers commands = Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier;
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (!event->isAutoRepeat())
            Q_EMIT entered();
    } else if (event->key() == Qt::Key_Backspace) {
        change(m_text.chopped(std::min<qsizetype>(1, m_text.size())));
    } else if (event->key() == Qt::Key_Delete) {
        change({});
    } else if (!typed.isEmpty() && typed[0].isPrint() && !(event->modifiers() & commands)) {
        type(typed);
    } else {
        QWidget::keyPressEvent(event);
        return;
    }
    event->accept();
}

} // namespace strandbench
