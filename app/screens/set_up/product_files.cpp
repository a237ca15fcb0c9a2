// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/product_files.h"

#include "exchange/sheet_csv.h"
#include "exchange/sheets.h"
#include "screens/set_up/keeping_screens.h"
#include "screens/frame/paged_rows.h"
#include "theme/sizes.h"
#include "words/sheet_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(ProductFiles)
};

constexpr double faultHeight = 14; // mm: three lines

class ProductFaultsScreen final : public Screen {
public:
    ProductFaultsScreen(const Surroundings& around, const QString& path, const Faults& faults,
                        const std::function<void()>& done, QWidget* parent)
        : Screen(around, u"screen_set_up_product_faults"_s, parent)
    {
        buildFrame(QFileInfo(path).fileName(), Says::tr("This file is no sheet that can be used"));
        answers()->stop()->hide();
        auto* rows = new PagedRows(around, faultHeight, this);
        std::vector<PagedRows::MakeRow> all;
        for (const Fault& each : faults)
            all.push_back([this, text = SheetWords(words()).fault(each), at = all.size()](QWidget* inside) -> QWidget* {
                auto* line = new FitLabel(theme(), u"fault_%1"_s.arg(at), TextRole::Body, inside);
                line->setText(text);
                return line;
            });
        rows->setRows(std::move(all));
        content()->addWidget(rows, 1);
        answers()->setWayOn(Says::tr("Another file"));
        connect(answers(), &AnswerBar::wayOnTapped, this, done);
    }
};

} // namespace

ProductPickScreen::ProductPickScreen(const Surroundings& around, const QString& folder, QWidget* parent)
    : Screen(around, u"screen_set_up_product_pick"_s, parent)
{
    buildFrame(QDir::toNativeSeparators(folder), Says::tr("Which product sheet is to be read?"));
    const QFileInfoList files = QDir(folder).entryInfoList({u"*.json"_s, u"*.csv"_s}, QDir::Files, QDir::Time);
    if (files.empty()) {
        content()->addWidget(label(u"product_pick_none"_s, TextRole::Body,
                                   Says::tr("There is no JSON and no CSV file in this folder.")));
    } else {
        auto* rows = new PagedRows(around, sizes::denseTarget, this);
        std::vector<PagedRows::MakeRow> all;
        for (const QFileInfo& each : files)
            all.push_back([this, each, at = all.size()](QWidget* inside) -> QWidget* {
                auto* row = new TapButton(theme(), u"file_%1"_s.arg(at), TapButton::Kind::Plain, inside);
                row->setLeastSize(sizes::denseTarget, sizes::denseTarget);
                row->setTitle(each.fileName());
                row->setSecondLine(momentText(each.lastModified().toMSecsSinceEpoch(), words()));
                row->setTitleSize({4.6, 3.4});
                connect(row, &TapButton::clicked, this, [this, path = each.filePath()] { Q_EMIT chosen(path); });
                return row;
            });
        rows->setRows(std::move(all));
        content()->addWidget(rows, 1);
    }
    answers()->stop()->hide();
    answers()->setWayOn(Says::tr("Another folder"));
    connect(answers(), &AnswerBar::wayOnTapped, this, &ProductPickScreen::folderWanted);
}

Checked<ProductSheet> readSheetFile(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return tl::unexpected(Faults{{u"file"_s, QFileInfo(path).fileName(), FaultKind::NotReadable, {}}});
    if (file.size() > longestSheetFile)
        return tl::unexpected(
            Faults{{u"file"_s, QString::number(file.size()), FaultKind::TooLong, {QString::number(longestSheetFile)}}});
    const QByteArray bytes = file.read(longestSheetFile + 1);
    return path.endsWith(u".csv"_s, Qt::CaseInsensitive) ? readSheetCsv(bytes) : readSheet(bytes);
}

Screen* makeProductFaults(const Surroundings& around, const QString& path, const Faults& faults,
                          const std::function<void()>& done, QWidget* parent)
{
    return new ProductFaultsScreen(around, path, faults, done, parent);
}

} // namespace strandbench
