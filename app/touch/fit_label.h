// SPDX-License-Identifier: GPL-3.0-or-later
// Text that fits its place: drawn at its role's preferred size, wrapped and shrunk down to the least size.
#pragma once

#include "theme/theme.h"
#include "touch/shown_text.h"

#include <QWidget>

namespace strandbench {

struct FittedText;

class FitLabel : public QWidget, public ShowsText {
    Q_OBJECT
    Q_PROPERTY(QString text READ text WRITE setText)
public:
    FitLabel(const Theme& theme, const QString& name, TextRole role, QWidget* parent = nullptr);

    void setText(const QString& text); ///< also the accessible name
    [[nodiscard]] QString text() const { return m_text; }
    void setRole(Role ink)
    {
        m_ink = ink;
        update();
    }
    void setBold(bool bold);
    void setAlignment(Qt::Alignment alignment)
    {
        m_alignment = alignment;
        update();
    }
    void setLines(int atMost); ///< default: as many as fit; 1 never wraps
    /// Where the text is a list of parts with this between them, and is too long: parts after the first are left out,
    /// one by one, and "…" stands for them. The text and the accessible name stay whole. Default: none is left out.
    void setLeavesOut(const QString& between);
    [[nodiscard]] TextRole textRole() const { return m_textRole; }
    [[nodiscard]] bool textFits() const;
    [[nodiscard]] double smallestTextMm() const;
    [[nodiscard]] std::vector<ShownText> shownTexts() const override;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override { return heightAt(width, 0); }
    /// The height in pixels that the text takes at a width, 0: at its preferred size, 1: at its least.
    [[nodiscard]] int heightAt(int width, double shrink) const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] FittedText fitted() const;
    void remeasure();

    const Theme& m_theme;
    TextRole m_textRole;
    QString m_text;
    Role m_ink = Role::Ink;
    bool m_bold = false;
    Qt::Alignment m_alignment = Qt::AlignLeft | Qt::AlignVCenter;
    int m_lines = 99;
    QString m_between; ///< empty: nothing is left out
    QSize m_hint;
    QSize m_leastHint;
};

} // namespace strandbench
