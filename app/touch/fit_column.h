// SPDX-License-Identifier: GPL-3.0-or-later
// Texts below each other that share one height: all shrink in step until every one of them is whole.
#pragma once

#include "touch/fit_label.h"

#include <QLayout>

#include <memory>
#include <vector>

namespace strandbench {

/// A column of rows; a row is one or more texts below each other, with or without a sign beside them. A text that
/// is hidden or empty takes no room. Spare height stays above and below.
class FitColumn final : public QLayout {
    Q_OBJECT
public:
    FitColumn() = default;
    ~FitColumn() override;

    void addText(FitLabel* text) { addRow({text}); }
    /// sign keeps its fixed size, centred beside the texts; rowGap (pixels) is kept above the row, except the first.
    void addRow(const std::vector<FitLabel*>& texts, QWidget* sign = nullptr, int signGap = 0, int rowGap = 0);

    void addItem(QLayoutItem* item) override; ///< of the texts and signs; use addText and addRow
    [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override; ///< with every text at its preferred size
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    void setGeometry(const QRect& rect) override;

private:
    struct Row {
        std::vector<FitLabel*> texts;
        QWidget* sign;
        int signGap;
        int rowGap;
        [[nodiscard]] bool shown() const;
        [[nodiscard]] int inset() const; ///< width that the sign takes
        [[nodiscard]] int textHeight(int width, double shrink) const;
        [[nodiscard]] int height(int width, double shrink) const;
        void place(const QRect& where, double shrink) const;
    };
    [[nodiscard]] int heightAt(int width, double shrink) const;

    std::vector<std::unique_ptr<QLayoutItem>> m_items;
    std::vector<Row> m_rows;
};

} // namespace strandbench
