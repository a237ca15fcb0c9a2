// SPDX-License-Identifier: GPL-3.0-or-later
// A refusal is a whole screen: what is wrong, why, what to do instead, who may override. The easy way on
// parks the job; assessing again takes a one-second hold.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

/// What refuses: questions that were not asked any more because of it are left out.
[[nodiscard]] std::vector<Stop> refusing(const std::vector<Stop>& stops);

class RefusalScreen final : public Screen {
    Q_OBJECT
public:
    /// overridable: a supervisor may take all of them away.
    RefusalScreen(const Surroundings& around, const Repair& repair, const std::vector<Stop>& given, bool overridable,
                  QWidget* parent = nullptr);

Q_SIGNALS:
    /// stops: the codes of those that refuse.
    void overrideWanted(const std::vector<QString>& stops);

private:
    void buildSide(QWidget* card, QBoxLayout* row);
    [[nodiscard]] QWidget* makeOverrideKey(QWidget* card);
    void buildWords(QBoxLayout* row, const std::vector<Stop>& stops);

    bool m_overridable;
    std::vector<QString> m_because; ///< codes
};

} // namespace strandbench
