// SPDX-License-Identifier: GPL-3.0-or-later
// Rows below each other, as many as fit, with large arrows to the rest. Nothing scrolls.
#pragma once

#include "screens/frame/screen.h"

class QGridLayout;

namespace strandbench {

class PagedRows final : public QWidget {
    Q_OBJECT
public:
    using MakeRow = std::function<QWidget*(QWidget* parent)>;
    static constexpr double wholePages = 0;
    /// rowHeightMm: of every row; wholePages: each row fills a page.
    PagedRows(const Surroundings& around, double rowHeightMm, QWidget* parent);
    void setRows(std::vector<MakeRow> rows); ///< shows the first page
    [[nodiscard]] int pages() const;
    [[nodiscard]] int page() const { return m_page; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void turn(int pages);
    void showPage();
    void buildPage();
    [[nodiscard]] int perPage() const;
    TapButton* arrow(const QString& name, const QString& title, bool up);

    const Surroundings m_around;
    double m_rowHeight;
    std::vector<MakeRow> m_rows;
    QWidget* m_box;
    QWidget* m_column = nullptr;
    QWidget* m_keys;
    TapButton* m_earlier = nullptr;
    TapButton* m_later = nullptr;
    FitLabel* m_number = nullptr;
    int m_page = 0;
    int m_shownPerPage = 0;
    bool m_showing = false;
};

} // namespace strandbench
