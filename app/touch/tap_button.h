// SPDX-License-Identifier: GPL-3.0-or-later
// A button for a gloved thumb: a sign or picture, a title, a second line; text shrinks to its role's least
// size and wraps before it is ever clipped.
#pragma once

#include "pictures/pictogram.h"
#include "theme/theme.h"
#include "touch/shown_text.h"

#include <QAbstractButton>

#include <functional>

namespace strandbench {

struct TapLayout;

class TapButton : public QAbstractButton, public ShowsText {
    Q_OBJECT
public:
    enum class Kind {
        Plain,  ///< card with an ink outline
        Way,    ///< the one way on: filled with the action colour
        Go,     ///< filled green
        Stop,   ///< card with a red outline and red text
        Choice, ///< plain; checkable, a checked one has a thick action outline and a tick
        Quiet,  ///< card with a soft edge, for keys beside the main thing
    };
    /// name: the object name, stable, lower_snake ("answer_way_on"); title: also the accessible name.
    TapButton(const Theme& theme, const QString& name, Kind kind, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setSecondLine(const QString& text); ///< also the accessible description
    void setSign(Pictogram sign);
    /// Draws a picture in the rectangle given, left of the text (or above it when the button is upright).
    using Picture = std::function<void(QPainter&, const QRectF&)>;
    void setPicture(Picture picture);
    void setLeastSize(double widthMm, double heightMm); ///< default 20 x 20 mm
    void keepPlaceWhenHidden();                         ///< what stands beside it does not move
    void setKind(Kind kind);                            ///< Way to Go and back; a Choice stays one
    void setTitleSize(TextSize size);                   ///< default: 6 down to 4 mm, 7.2 down to 4 mm when filled
    void setMarked(bool marked);                        ///< thick outline: what is typed goes here
    [[nodiscard]] QString title() const { return m_title; }
    [[nodiscard]] QString secondLine() const { return m_second; }
    [[nodiscard]] Kind kind() const { return m_kind; }
    /// True when every text is drawn whole at its least size or larger (for the rule test).
    [[nodiscard]] bool textFits() const;
    /// Em height in millimetres of the smallest text as drawn now (for the rule test).
    [[nodiscard]] double smallestTextMm() const;
    [[nodiscard]] std::vector<ShownText> shownTexts() const override;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override; ///< Space acts; Enter is the window's
    void keyReleaseEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override; ///< a second press, never a meaning of its own
    [[nodiscard]] const Theme& theme() const { return m_theme; }
    virtual void paintProgress(QPainter&, const QRectF&) {} ///< HoldButton's ring

private:
    [[nodiscard]] TapLayout arranged() const;
    [[nodiscard]] bool filled() const;
    [[nodiscard]] QColor face() const;
    [[nodiscard]] QColor titleInk() const;
    void paintFace(QPainter& painter) const;
    void paintContent(QPainter& painter) const;
    void paintFocus(QPainter& painter) const;

    const Theme& m_theme;
    Kind m_kind;
    QString m_title;
    QString m_second;
    TextSize m_titleSize;
    bool m_marked = false;
    Pictogram m_sign = Pictogram::None;
    Picture m_picture;
    QSizeF m_leastMm{20, 20};
};

} // namespace strandbench
