// SPDX-License-Identifier: GPL-3.0-or-later
// Where the job sheet goes, and on which paper: a folder, or a printer; then where it went, or why not.
#pragma once

#include "screens/paper_worker.h"
#include "screens/printing.h"
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
    SheetScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr,
                Printing printing = Printing::bySystem());

private:
    struct Sheet;
    struct Ended {
        QString told;     ///< what became of it
        QString trouble;  ///< why nothing did; empty where something did
        QString whatToDo; ///< about the trouble
    };
    using Make = std::function<Ended(const Sheet& sheet, const std::stop_token& stop)>;

    void buildFolders(QBoxLayout* column);
    void buildPapers(QBoxLayout* column);
    void choosePaper(Paper paper);
    void keep(const Logged<RepairFile>& file);
    void write(const QString& folder, TapButton* key);
    void print();
    void paintOn(const std::shared_ptr<QPrinter>& printer);
    void make(TapButton* key, const QString& doing, const Make& make);
    void setMaking(bool making);
    [[nodiscard]] QString stem() const;

    Printing m_printing;
    std::vector<TapButton*> m_keys; ///< that need the record: folders, then the printer
    TapButton* m_print = nullptr;
    TapButton* m_a4 = nullptr;
    TapButton* m_letter = nullptr;
    FitLabel* m_told = nullptr;
    std::shared_ptr<const JobRecord> m_record;
    std::shared_ptr<const RepairFile> m_file;
    Paper m_paper;
    PaperWorker m_worker;
};

} // namespace strandbench
