// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: how the record is kept safe: backups, the look through the whole log, other logs, a backup in the log's
// place.
#pragma once

#include "screens/set_up/keeping_screens.h"
#include "screens/set_up/set_up_screen.h"

namespace strandbench {

class SetUpRecordScreen final : public SetUpScreen {
    Q_OBJECT
public:
    /// keeper: null where the bench looks only.
    SetUpRecordScreen(const Surroundings& around, const SetUpPlace& place, const Keeper* keeper,
                      QWidget* parent = nullptr);

    void tick() override;

Q_SIGNALS:
    void keepingWanted(strandbench::Keeping what);

private:
    void addFolder(QBoxLayout* column);
    void addChoices(QBoxLayout* column);
    void addKeys(QBoxLayout* column);
    TapButton* wish(const QString& name, const QString& title, Keeping what);
    [[nodiscard]] QString backupText() const;
    [[nodiscard]] QString checkText() const;

    const Keeper* m_keeper;
    TapButton* m_backUp = nullptr;
    TapButton* m_check = nullptr;
    std::vector<TapButton*> m_wishes;
};

} // namespace strandbench
