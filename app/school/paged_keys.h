// SPDX-License-Identifier: GPL-3.0-or-later
// Keys of one size, six at a time; where there are more, the last place leads to the next page.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

class PagedKeys final : public QWidget {
    Q_OBJECT
public:
    using Make = std::function<TapButton*(QWidget* parent)>;
    /// moreName: object name of the key to the next page.
    PagedKeys(const Surroundings& around, const QString& moreName, int columns, QWidget* parent);
    void setKeys(std::vector<Make> keys); ///< shows the first page

Q_SIGNALS:
    void pageShown();

private:
    void showPage(std::size_t first);
    [[nodiscard]] TapButton* makeMore(std::size_t first, std::size_t room, QWidget* parent);

    static constexpr std::size_t perPage = 6;
    const Theme& m_theme;
    QString m_moreName;
    int m_columns;
    std::vector<Make> m_keys;
    QWidget* m_page = nullptr;
};

} // namespace strandbench
