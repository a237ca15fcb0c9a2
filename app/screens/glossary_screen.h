// SPDX-License-Identifier: GPL-3.0-or-later
// The words of the trade, in the order of the alphabet, page by page.
#pragma once

#include "screens/screen.h"
#include "words/glossary.h"

namespace strandbench {

class GlossaryScreen final : public Screen {
    Q_OBJECT
public:
    explicit GlossaryScreen(const Surroundings& around, QWidget* parent = nullptr);

Q_SIGNALS:
    void jobWanted();

private:
    [[nodiscard]] QWidget* page(const std::vector<GlossaryEntry>& entries, std::size_t from, QWidget* parent);
    [[nodiscard]] std::size_t perCard() const { return around().upright ? 4 : 3; }
};

} // namespace strandbench
