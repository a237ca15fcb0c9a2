// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/paper/paper_screen.h"

#include "report/write_new.h"
#include "theme/sizes.h"

#include <QCoreApplication>
#include <QPointer>
#include <QPrinter>
#include <QStandardPaths>
#include <QStorageInfo>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t mostFolders = 4; // that a glass has room for
constexpr double keyHeight = 20;       // mm
constexpr double mostKeyHeight = 30;   // of a folder

} // namespace

std::vector<SheetFolder> sheetFolders()
{
    std::vector<SheetFolder> folders{{QCoreApplication::translate("PaperScreen", "Documents"),
                                      QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)}};
    for (const QStorageInfo& each : QStorageInfo::mountedVolumes()) {
        const QString at = each.rootPath();
        const bool stick = at.startsWith(u"/media/"_s) || at.startsWith(u"/run/media/"_s);
        if (stick && each.isReady() && !each.isReadOnly() && folders.size() < mostFolders)
            folders.push_back({QCoreApplication::translate("PaperScreen", "USB stick"), at});
    }
    return folders;
}

PaperScreen::PaperScreen(const Surroundings& around, const QString& name, const QString& sentence, QWidget* parent,
                         Printing printing)
    : Screen(around, name, parent),
      m_printing(std::move(printing)),
      m_paper(around.words.units() == UnitSystem::UsCustomary ? Paper::Letter : Paper::A4),
      m_worker(around.bench.computing())
{
    buildFrame({}, sentence);
    const auto column = [this] {
        auto* made = new QVBoxLayout;
        made->setSpacing(px(sizes::gap));
        content()->addLayout(made, 1);
        return made;
    };
    buildFolders(column());
    auto* beside = column();
    buildPapers(beside);
    m_told = label(u"sheet_told"_s, TextRole::Body);
    m_told->setMinimumHeight(px(10));
    beside->addWidget(m_told, 1);
    setMaking(false); // and no key open until there is something to write
    answers()->stop()->hide();
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { m_worker.stop(); });
    choosePaper(m_paper);
}

void PaperScreen::buildFolders(QBoxLayout* column)
{
    for (const SheetFolder& each : sheetFolders()) {
        auto* key = new TapButton(theme(), u"sheet_folder_%1"_s.arg(m_keys.size()), TapButton::Kind::Plain, this);
        key->setTitle(each.title);
        key->setSecondLine(each.path);
        connect(key, &TapButton::clicked, this, [this, path = each.path, key] { write(path, key); });
        key->setMaximumHeight(px(mostKeyHeight));
        column->addWidget(key, 2);
        m_keys.push_back(key);
    }
    column->addStretch(1);
}

void PaperScreen::buildPapers(QBoxLayout* column)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(px(sizes::gap));
    const auto key = [&](const QString& name, const QString& title, Paper paper) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Choice, this);
        made->setCheckable(true);
        made->setTitle(title);
        made->setFixedHeight(px(keyHeight));
        connect(made, &TapButton::clicked, this, [this, paper] { choosePaper(paper); });
        row->addWidget(made, 1);
        return made;
    };
    m_a4 = key(u"paper_a4"_s, u"A4"_s, Paper::A4);
    m_letter = key(u"paper_letter"_s, tr("US Letter"), Paper::Letter);
    column->addLayout(row);
    m_print = new TapButton(theme(), u"sheet_print"_s, TapButton::Kind::Plain, this);
    m_print->setTitle(tr("Print"));
    m_print->setFixedHeight(px(keyHeight));
    connect(m_print, &TapButton::clicked, this, &PaperScreen::print);
    column->addWidget(m_print);
    m_keys.push_back(m_print);
}

void PaperScreen::choosePaper(Paper paper)
{
    m_paper = paper;
    m_a4->setChecked(paper == Paper::A4);
    m_letter->setChecked(paper == Paper::Letter);
}

void PaperScreen::ready(Papers papers)
{
    m_papers = std::make_shared<const Papers>(std::move(papers));
    setMaking(false);
}

PaperScreen::Ended PaperScreen::written(const QString& folder, const Papers& papers, const QByteArray& pdf)
{
    const auto pdfPath = writeBeside(folder, papers.stem, pdf);
    if (!pdfPath)
        return {{}, tr("The sheet could not be written."), pdfPath.error()};
    const QString stem = pdfPath->left(pdfPath->size() - 4); // without ".pdf": what lies beside has the same name
    for (const auto& [ending, bytes] : papers.beside)
        if (const auto done = writeNew(stem + u'.' + ending, bytes()); !done)
            return {tr("Written: %1").arg(*pdfPath), tr("The file beside the sheet could not be written."),
                    done.error()};
    //: %1 is the path of a file
    return {tr("Written: %1").arg(*pdfPath), {}, {}};
}

void PaperScreen::write(const QString& folder, TapButton* key)
{
    make(key, tr("Being written …"), [folder](const Papers& papers, Paper paper, const std::stop_token& stop) -> Ended {
        const QByteArray pdf = papers.pdf(paper, stop);
        return pdf.isEmpty() ? Ended{tr("Cancelled: nothing was written."), {}, {}} : written(folder, papers, pdf);
    });
}

void PaperScreen::print()
{
    m_told->setText({});
    if (m_printing.printers().isEmpty())
        return showTrouble(tr("No printer is set up on this machine."),
                           tr("Write the sheet to a stick, and print it elsewhere."));
    showTrouble({}, {});
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setResolution(sheetDotsPerInch);
    printer->setFullPage(true); // the sheet keeps margins of its own
    printer->setPageSize(pageSizeOf(m_paper));
    printer->setDocName(m_papers->stem);
    m_printing.ask(printer, this, [screen = QPointer<PaperScreen>(this), printer](bool print) {
        if (screen && print)
            screen->paintOn(printer);
    });
}

void PaperScreen::paintOn(const std::shared_ptr<QPrinter>& printer)
{
    make(m_print, tr("Being printed …"),
         [printer](const Papers& papers, Paper paper, const std::stop_token& stop) -> Ended {
             switch (papers.print(*printer, paper, stop)) {
             case PrintEnd::Whole:
                 break;
             case PrintEnd::Stopped:
                 printer->abort();
                 return {tr("Cancelled: nothing was printed."), {}, {}};
             case PrintEnd::Failed:
                 return {{}, tr("The printer does not take the sheet."), tr("Look at the printer, and try again.")};
             }
             const QString name = printer->printerName();
             //: %1 is the name of a printer
             return {name.isEmpty() ? tr("Given to the printer") : tr("Given to the printer: %1").arg(name), {}, {}};
         });
}

void PaperScreen::make(TapButton* key, const QString& doing, const Make& make)
{
    showTrouble({}, {});
    m_told->setText({});
    setMaking(true);
    const QString before = key->secondLine();
    key->setSecondLine(doing);
    m_worker.ask(
        [this, key, before, make, papers = m_papers, paper = m_paper](const std::stop_token& stop) -> Worker::Show {
            return [this, key, before, ended = make(*papers, paper, stop)] {
                key->setSecondLine(before);
                setMaking(false);
                m_told->setText(ended.told);
                if (!ended.trouble.isEmpty())
                    showTrouble(ended.trouble, ended.whatToDo);
            };
        });
}

void PaperScreen::setMaking(bool making)
{
    for (TapButton* each : m_keys)
        each->setEnabled(!making && m_papers);
    for (TapButton* each : {m_a4, m_letter})
        each->setEnabled(!making);
    answers()->setWayOn(making ? tr("Cancel") : QString());
}

} // namespace strandbench
