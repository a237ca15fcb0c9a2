// SPDX-License-Identifier: GPL-3.0-or-later
// One running mix on the ribbon at the top: job, phase by shape and word, time to the next act, filled as it
// runs down. A tap goes there.
#pragma once

#include "clock/batch_clock.h"
#include "theme/theme.h"

#include <QAbstractButton>

namespace strandbench {

struct MixBlockText {
    QString job;   ///< "4421"
    QString phase; ///< "Spread"
    QString time;  ///< "02:05"
    int turn = 0;  ///< of two that need hands at once: 1 goes first; 0: hands are free for it
    QString spokenTurn = {};
};

class MixBlock final : public QAbstractButton {
    Q_OBJECT
public:
    static constexpr double wideMm = 56;   ///< at least, for sign, words and time side by side
    static constexpr double narrowMm = 35; ///< at least, with the words below sign and time

    MixBlock(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setShown(const ClockFace& face, const MixBlockText& text);
    [[nodiscard]] bool textFits() const;
    [[nodiscard]] double smallestTextMm() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override; ///< Enter is the window's
    void keyReleaseEvent(QKeyEvent* event) override;

private:
    const Theme& m_theme;
    ClockFace m_face;
    MixBlockText m_text;
};

} // namespace strandbench
