// SPDX-License-Identifier: GPL-3.0-or-later
// Where the job sheet goes, and on which paper; then where it went, or why not.
#pragma once

#include "screens/screen.h"

#include "report/job_sheet.h"

namespace strandbench {

/// A folder that a sheet may go to.
struct SheetFolder {
    QString title;
    QString path;
};

/// The person's documents, and each stick that is mounted under /media or /run/media and can be written to.
[[nodiscard]] std::vector<SheetFolder> sheetFolders();

class SheetScreen final : public Screen {
    Q_OBJECT
public:
    SheetScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr);

private:
    void buildFolders(QBoxLayout* column);
    void buildPapers(QBoxLayout* column);
    void choosePaper(Paper paper);
    void keep(const Logged<RepairFile>& file);
    void write(const QString& folder);

    std::vector<TapButton*> m_folders;
    TapButton* m_a4 = nullptr;
    TapButton* m_letter = nullptr;
    FitLabel* m_told = nullptr;
    std::optional<JobRecord> m_record;
    RepairFile m_file;
    Paper m_paper;
};

} // namespace strandbench
