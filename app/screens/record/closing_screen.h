// SPDX-License-Identifier: GPL-3.0-or-later
// A repair that was handed over is signed off or returned: what its record lacks is listed before.
#pragma once

#include "review/warranty.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

class ClosingScreen final : public Screen {
    Q_OBJECT
public:
    ClosingScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr);

Q_SIGNALS:
    void signOffWanted();
    void returnWanted();
    void correctWanted();
    void otherWanted(const QUuid& repair); ///< the rework, or the repair that this one does again

private:
    void showRecord(const JobRecord& record);
    void buildKeys(const JobRecord& record);
    [[nodiscard]] QString stands(const JobRecord& record) const;

    PagedRows* m_rows = nullptr;
};

} // namespace strandbench
