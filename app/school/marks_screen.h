// SPDX-License-Identifier: GPL-3.0-or-later
// How an attempt is marked: the whole in a sentence, and each decision, one tap from its why.
#pragma once

#include "practice/marking.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

class MarksScreen final : public Screen {
    Q_OBJECT
public:
    /// marking: empty while it is being worked out.
    MarksScreen(const Surroundings& around, const PracticePanel& panel, const std::optional<Marking>& marking,
                QWidget* parent = nullptr);

Q_SIGNALS:
    void markTapped(std::size_t index);
    void replayTapped();
    void doneTapped();

private:
    [[nodiscard]] PagedRows::MakeRow rowOf(const Mark& mark, std::size_t index);
};

} // namespace strandbench
