// SPDX-License-Identifier: GPL-3.0-or-later
// One job on the home rail: number, panel, section of this repair, who, and what is next or what it waits for.
#pragma once

#include "pictures/section_picture.h"
#include "touch/shown_text.h"
#include "theme/theme.h"
#include "pictures/pictogram.h"

#include <QAbstractButton>

namespace strandbench {

class JobCard final : public QAbstractButton, public ShowsText {
    Q_OBJECT
public:
    struct Shown {
        QString job;
        QString panel;
        QString who;        ///< "SMC · Ada"
        QString next;       ///< "Spread"
        QString nextDetail; ///< "02:05 to go"
        Pictogram sign = Pictogram::None;
        SectionDrawing drawing;
    };
    JobCard(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setShown(const Shown& shown);
    [[nodiscard]] const Shown& onCard() const { return m_shown; }

    [[nodiscard]] std::vector<ShownText> shownTexts() const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override; ///< Enter is the window's
    void keyReleaseEvent(QKeyEvent* event) override;

private:
    struct Line {
        QString text;
        QRectF where;
        TextRole role;
        bool bold;
        bool muted;
        int most = 1; ///< lines
    };
    [[nodiscard]] std::vector<Line> lines() const;
    [[nodiscard]] QRectF pictureBox() const;
    [[nodiscard]] QRectF signBox() const;
    [[nodiscard]] QRectF footBox() const; ///< of the next step's texts, beside its sign

    const Theme& m_theme;
    Shown m_shown;
};

} // namespace strandbench
