// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/sheet_screen.h"

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

} // namespace

std::vector<SheetFolder> sheetFolders()
{
    std::vector<SheetFolder> folders{{QCoreApplication::translate("SheetScreen", "Documents"),
                                      QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)}};
    for (const QStorageInfo& each : QStorageInfo::mountedVolumes()) {
        const QString at = each.rootPath();
        const bool stick = at.startsWith(u"/media/"_s) || at.startsWith(u"/run/media/"_s);
        if (stick && each.isReady() && !each.isReadOnly() && folders.size() < mostFolders)
            folders.push_back({QCoreApplication::translate("SheetScreen", "USB stick"), at});
    }
    return folders;
}

/// Everything that a sheet is made of, its own: the screen, and the bench's catalogue, may change meanwhile.
struct SheetScreen::Sheet {
    std::shared_ptr<const JobRecord> record;
    std::shared_ptr<const RepairFile> file;
    Catalogue catalogue;
    Assumptions assumptions;
    Words words;
    Paper paper;

    [[nodiscard]] SheetFacts facts(const std::stop_token& stop) const
    {
        const auto picture = [this](const QByteArray& hash) {
            const auto found = file->pictures.find(hash);
            return found == file->pictures.end() ? QByteArray() : found->second;
        };
        return {file->head, catalogue, assumptions, picture, paper, stop};
    }
};

SheetScreen::SheetScreen(const Surroundings& around, const QUuid& repair, QWidget* parent, Printing printing)
    : Screen(around, u"screen_sheet"_s, parent),
      m_printing(std::move(printing)),
      m_paper(around.words.units() == UnitSystem::UsCustomary ? Paper::Letter : Paper::A4),
      m_worker(around.bench.computing())
{
    buildFrame({}, tr("Choose where the job sheet goes"));
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
    setMaking(false); // and no key open until the record is there
    answers()->stop()->hide();
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { m_worker.stop(); });
    choosePaper(m_paper);
    around.bench.recorder().readRepair(repair, [screen = QPointer<SheetScreen>(this)](const Logged<RepairFile>& file) {
        if (screen)
            screen->keep(file);
    });
}

void SheetScreen::buildFolders(QBoxLayout* column)
{
    for (const SheetFolder& each : sheetFolders()) {
        auto* key = new TapButton(theme(), u"sheet_folder_%1"_s.arg(m_keys.size()), TapButton::Kind::Plain, this);
        key->setTitle(each.title);
        key->setSecondLine(each.path);
        connect(key, &TapButton::clicked, this, [this, path = each.path, key] { write(path, key); });
        column->addWidget(key, 2);
        m_keys.push_back(key);
    }
}

void SheetScreen::buildPapers(QBoxLayout* column)
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
    connect(m_print, &TapButton::clicked, this, &SheetScreen::print);
    column->addWidget(m_print);
    m_keys.push_back(m_print);
}

void SheetScreen::choosePaper(Paper paper)
{
    m_paper = paper;
    m_a4->setChecked(paper == Paper::A4);
    m_letter->setChecked(paper == Paper::Letter);
}

void SheetScreen::keep(const Logged<RepairFile>& file)
{
    if (!file)
        return showTrouble(file.error());
    auto record = recordOf(file->events, around().bench.planning().catalogue);
    if (!record)
        return showTrouble(tr("This record cannot be read."), words().fault(record.error().front()));
    m_file = std::make_shared<const RepairFile>(*file);
    m_record = std::make_shared<const JobRecord>(std::move(*record));
    setContext(contextOf(m_record->repair, words()));
    setMaking(false);
}

QString SheetScreen::stem() const
{
    return u"job-%1-%2"_s.arg(asFileName(m_record->repair.job), localDay(around().bench.clock().now()));
}

void SheetScreen::write(const QString& folder, TapButton* key)
{
    make(key, tr("Being written …"), [folder, stem = stem()](const Sheet& sheet, const std::stop_token& stop) -> Ended {
        const QByteArray pdf = jobSheetPdf(*sheet.record, sheet.facts(stop), sheet.words);
        if (pdf.isEmpty())
            return {tr("Cancelled: nothing was written."), {}, {}};
        const auto written = writeBeside(folder, stem, pdf);
        if (!written)
            return {{}, tr("The job sheet could not be written."), written.error()};
        //: %1 is the path of a file
        return {tr("Written: %1").arg(*written), {}, {}};
    });
}

void SheetScreen::print()
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
    printer->setDocName(stem());
    m_printing.ask(printer, this, [screen = QPointer<SheetScreen>(this), printer](bool print) {
        if (screen && print)
            screen->paintOn(printer);
    });
}

void SheetScreen::paintOn(const std::shared_ptr<QPrinter>& printer)
{
    make(m_print, tr("Being printed …"), [printer](const Sheet& sheet, const std::stop_token& stop) -> Ended {
        switch (printJobSheet(*printer, *sheet.record, sheet.facts(stop), sheet.words)) {
        case PrintEnd::Whole:
            break;
        case PrintEnd::Stopped:
            printer->abort();
            return {tr("Cancelled: nothing was printed."), {}, {}};
        case PrintEnd::Failed:
            return {{}, tr("The printer does not take the job sheet."), tr("Look at the printer, and try again.")};
        }
        const QString name = printer->printerName();
        //: %1 is the name of a printer
        return {name.isEmpty() ? tr("Given to the printer") : tr("Given to the printer: %1").arg(name), {}, {}};
    });
}

void SheetScreen::make(TapButton* key, const QString& doing, const Make& make)
{
    showTrouble({}, {});
    m_told->setText({});
    setMaking(true);
    const QString before = key->secondLine();
    key->setSecondLine(doing);
    const auto sheet = std::make_shared<const Sheet>(
        Sheet{m_record, m_file, around().bench.planning().catalogue, around().bench.assumptions(), words(), m_paper});
    m_worker.ask([this, key, before, sheet, make](const std::stop_token& stop) -> Worker::Show {
        return [this, key, before, ended = make(*sheet, stop)] {
            key->setSecondLine(before);
            setMaking(false);
            m_told->setText(ended.told);
            if (!ended.trouble.isEmpty())
                showTrouble(ended.trouble, ended.whatToDo);
        };
    });
}

void SheetScreen::setMaking(bool making)
{
    for (TapButton* each : m_keys)
        each->setEnabled(!making && m_record);
    for (TapButton* each : {m_a4, m_letter})
        each->setEnabled(!making);
    answers()->setWayOn(making ? tr("Cancel") : QString());
}

} // namespace strandbench
