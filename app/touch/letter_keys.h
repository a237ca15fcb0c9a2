// SPDX-License-Identifier: GPL-3.0-or-later
// Keys for a short text of one's own. A key is as wide as a gloved thumb, so sixteen fit: half the alphabet on a page,
// in its order.
#pragma once

#include "touch/tap_button.h"

#include <vector>

namespace strandbench {

class LetterKeys final : public QWidget {
    Q_OBJECT
public:
    /// columns: 8 on a wide glass, 4 on an upright one. accents: letters of the language beyond A to Z, at most 13;
    /// their page is left out when there are none. Keys are named letter_0 … letter_12 as they stand, letter_space,
    /// letter_delete, letter_page.
    LetterKeys(const Theme& theme, int columns, const QString& accents, QWidget* parent = nullptr);
    /// For what is no sentence (a path, a pattern): large and small letters and the signs of such texts on pages of
    /// their own, each typed as it stands.
    LetterKeys(const Theme& theme, int columns, QWidget* parent);
    void setText(const QString& text); ///< without a signal, cut to the longest
    [[nodiscard]] QString text() const { return m_text; }
    void setLongest(int characters);
    /// Puts a text at the end, as if typed.
    void type(const QString& text);

Q_SIGNALS:
    void textChanged(const QString& text);
    void entered(); ///< Enter on a keyboard

protected:
    void keyPressEvent(QKeyEvent* event) override; ///< what a keyboard writes, Backspace and Delete

private:
    LetterKeys(const Theme& theme, int columns, std::vector<QString> pages, bool asShown, QWidget* parent);
    TapButton* addKey(const QString& name);
    void tapped(std::size_t key);
    void change(const QString& text);
    void showPage();

    const Theme& m_theme;
    std::vector<QString> m_pages;
    bool m_asShown; ///< no letter is made small
    std::size_t m_page = 0;
    QString m_text;
    int m_longest = 80;
    std::vector<TapButton*> m_letters;
    TapButton* m_space = nullptr;
    TapButton* m_delete = nullptr;
    TapButton* m_next = nullptr;
};

} // namespace strandbench
