// SPDX-License-Identifier: GPL-3.0-or-later
// Where something goes that is made of paper, and on which: a folder, or a printer; then where it went, or why not.
#pragma once

#include "screens/paper/paper_worker.h"
#include "screens/paper/printing.h"
#include "screens/frame/screen.h"

#include "report/job_sheet.h"

namespace strandbench {

class TapButton;

/// A folder that a sheet may go to.
struct SheetFolder {
    QString title;
    QString path;
};

/// The person's documents, and each stick that is mounted under /media or /run/media and can be written to.
[[nodiscard]] std::vector<SheetFolder> sheetFolders();

/// What there is to write or print. All that it holds is its own: the screen, and the bench, may change meanwhile.
struct Papers {
    QString stem; ///< of the file's name, without its ending
    /// The bytes of the PDF; empty once it was asked to stop.
    std::function<QByteArray(Paper paper, const std::stop_token& stop)> pdf;
    std::function<PrintEnd(QPagedPaintDevice& device, Paper paper, const std::stop_token& stop)> print;
    /// Files of the same stem that go with the PDF: what their name ends in, and their bytes.
    std::vector<std::pair<QString, std::function<QByteArray()>>> beside = {};
};

class PaperScreen : public Screen {
    Q_OBJECT
public:
    PaperScreen(const Surroundings& around, const QString& name, const QString& sentence, QWidget* parent,
                Printing printing);

protected:
    /// From now on it can be written and printed.
    void ready(Papers papers);

private:
    struct Ended {
        QString told;     ///< what became of it
        QString trouble;  ///< why nothing did; empty where something did
        QString whatToDo; ///< about the trouble
    };
    using Make = std::function<Ended(const Papers& papers, Paper paper, const std::stop_token& stop)>;

    void buildFolders(QBoxLayout* column);
    void buildPapers(QBoxLayout* column);
    void choosePaper(Paper paper);
    void write(const QString& folder, TapButton* key);
    [[nodiscard]] static Ended written(const QString& folder, const Papers& papers, const QByteArray& pdf);
    void print();
    void paintOn(const std::shared_ptr<QPrinter>& printer);
    void make(TapButton* key, const QString& doing, const Make& make);
    void setMaking(bool making);

    Printing m_printing;
    std::vector<TapButton*> m_keys; ///< that need the papers: folders, then the printer
    TapButton* m_print = nullptr;
    TapButton* m_a4 = nullptr;
    TapButton* m_letter = nullptr;
    FitLabel* m_told = nullptr;
    std::shared_ptr<const Papers> m_papers;
    Paper m_paper;
    PaperWorker m_worker;
};

} // namespace strandbench
