// SPDX-License-Identifier: GPL-3.0-or-later
// The ribbon at the top: a block for each running mix, most urgent first, a count for those that do not fit,
// air, panel and dew margin with the age of the reading, and help.
#pragma once

#include "pictures/mix_block.h"
#include "bench/bench.h"
#include "shell/reading_button.h"
#include "touch/tap_button.h"
#include "words/words.h"

#include <QHBoxLayout>

namespace strandbench {

class Ribbon final : public QWidget {
    Q_OBJECT
public:
    Ribbon(const Theme& theme, const Words& words, const Bench& bench, QWidget* parent = nullptr);

    void tick();
    /// Stands in the reading's place, on yellow, until it is empty again.
    void setNotice(const QString& text);
    /// Says that no sound works here.
    void setSilent(bool silent);

Q_SIGNALS:
    void repairTapped(const QUuid& repair);
    void restTapped();
    void airTapped();
    void helpTapped();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void showBlocks(const std::vector<RunningMix>& mixes);
    void showReading();
    [[nodiscard]] QWidget* makeSilent();
    [[nodiscard]] double readingWidth() const; ///< mm, by the glass
    struct Room {
        std::size_t blocks;
        double widthMm; ///< of each
    };
    [[nodiscard]] Room room(std::size_t wanted) const;

    const Theme& m_theme;
    const Words& m_words;
    const Bench& m_bench;
    QHBoxLayout* m_row;
    std::vector<MixBlock*> m_blocks;
    std::vector<QUuid> m_shown;
    TapButton* m_rest;
    ReadingButton* m_reading;
    TapButton* m_help;
    QWidget* m_silent;
    QString m_notice;
};

} // namespace strandbench
