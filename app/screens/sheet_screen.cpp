// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/sheet_screen.h"

#include "report/write_new.h"
#include "theme/sizes.h"

#include <QCoreApplication>
#include <QPointer>
#include <QStandardPaths>
#include <QStorageInfo>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t mostFolders = 4; // that a glass has room for
constexpr double paperHeight = 20;     // mm

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

SheetScreen::SheetScreen(const Surroundings& around, const QUuid& repair, QWidget* parent)
    : Screen(around, u"screen_sheet"_s, parent),
      m_paper(around.words.units() == UnitSystem::UsCustomary ? Paper::Letter : Paper::A4)
{
    buildFrame({}, tr("Choose where the job sheet goes"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    content()->addLayout(column, 1);
    buildFolders(column);
    buildPapers(column);
    m_told = label(u"sheet_told"_s, TextRole::Body);
    m_told->setMinimumHeight(px(10));
    column->addWidget(m_told);
    column->addStretch(1);
    answers()->setWayOn({});
    answers()->stop()->hide();
    choosePaper(m_paper);
    around.bench.recorder().readRepair(repair, [screen = QPointer<SheetScreen>(this)](const Logged<RepairFile>& file) {
        if (screen)
            screen->keep(file);
    });
}

void SheetScreen::buildFolders(QBoxLayout* column)
{
    for (const SheetFolder& each : sheetFolders()) {
        auto* key = new TapButton(theme(), u"sheet_folder_%1"_s.arg(m_folders.size()), TapButton::Kind::Plain, this);
        key->setTitle(each.title);
        key->setSecondLine(each.path);
        key->setEnabled(false); // until the record is there
        connect(key, &TapButton::clicked, this, [this, path = each.path] { write(path); });
        column->addWidget(key, 2);
        m_folders.push_back(key);
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
        made->setFixedHeight(px(paperHeight));
        connect(made, &TapButton::clicked, this, [this, paper] { choosePaper(paper); });
        row->addWidget(made, 1);
        return made;
    };
    m_a4 = key(u"paper_a4"_s, u"A4"_s, Paper::A4);
    m_letter = key(u"paper_letter"_s, tr("US Letter"), Paper::Letter);
    column->addLayout(row);
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
    m_file = *file;
    m_record = std::move(*record);
    setContext(contextOf(m_record->repair, words()));
    for (TapButton* each : m_folders)
        each->setEnabled(true);
}

void SheetScreen::write(const QString& folder)
{
    showTrouble({}, {});
    m_told->setText({});
    const SheetFacts facts{m_file.head, around().bench.planning().catalogue, around().bench.assumptions(),
                           [this](const QByteArray& hash) {
                               const auto found = m_file.pictures.find(hash);
                               return found == m_file.pictures.end() ? QByteArray() : found->second;
                           },
                           m_paper};
    const QString stem = u"job-%1-%2"_s.arg(asFileName(m_record->repair.job), localDay(around().bench.clock().now()));
    const auto written = writeBeside(folder, stem, jobSheetPdf(*m_record, facts, words()));
    if (!written)
        return showTrouble(tr("The job sheet could not be written."), written.error());
    //: %1 is the path of a file
    m_told->setText(tr("Written: %1").arg(*written));
}

} // namespace strandbench
