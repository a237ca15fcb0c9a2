// SPDX-License-Identifier: GPL-3.0-or-later
// The shop's product sheets: looked at, typed, read from a file, written to one, kept and laid aside.
#include "exchange/built_in.h"
#include "exchange/sheet_csv.h"
#include "exchange/sheets.h"
#include "report/write_new.h"
#include "screens/frame/choice_screen.h"
#include "screens/beside/photo_screens.h"
#include "screens/set_up/product_edit_screen.h"
#include "screens/set_up/product_files.h"
#include "screens/set_up/product_page_screen.h"
#include "shell/bench_window.h"

#include <QCryptographicHash>
#include <QDir>

using namespace Qt::StringLiterals;

namespace strandbench {

void BenchWindow::showProduct(const ProductWish& wish)
{
    m_products = {};
    switch (wish.what) {
    case ProductWish::What::New:
        return place(Place::ProductKind);
    case ProductWish::What::FromFile:
        m_folderLookedAt = folderOfBackups();
        return place(Place::ProductPick);
    case ProductWish::What::Page:
        break;
    }
    m_products.id = wish.id;
    place(Place::Product);
}

QSet<QString> BenchWindow::takenSheetIds() const
{
    QSet<QString> taken;
    const Catalogue& catalogue = m_parts.bench.planning().catalogue; // what was laid aside is among the others
    for (const std::vector<ProductSheet>* sheets :
         {&demoCatalogue().sheets(), &catalogue.sheets(), &catalogue.others()})
        for (const ProductSheet& each : *sheets)
            taken << each.id;
    return taken;
}

void BenchWindow::editProduct(const SheetDraft& draft, const QByteArray& file, Place from, bool atTheEnd)
{
    m_products.draft = draft;
    m_products.file = file;
    m_products.from = from;
    m_products.atTheEnd = atTheEnd;
    place(Place::ProductEdit);
}

Screen* BenchWindow::makeProducts()
{
    switch (m_place) {
    case Place::Product:
        return makeProductPage();
    case Place::ProductKind: {
        ChoiceScreen::Spec spec;
        spec.name = u"screen_set_up_product_kind"_s;
        spec.context = tr("Product sheets");
        spec.sentence = tr("What kind of filler is it?");
        spec.ofARepair = false;
        for (const QString& code : allCodes<FillerClass>()) {
            const FillerClass filler = *fromCode<FillerClass>(code);
            spec.tiles.push_back(
                {u"kind_"_s + code, Words::title(m_words->filler(filler)), {}, {}, false, false, [this, filler] {
                     m_products.isNew = true;
                     editProduct(SheetDraft::ofClass(filler), {}, Place::ProductKind, false);
                 }});
        }
        return new ChoiceScreen(*m_around, std::move(spec), this);
    }
    case Place::ProductEdit:
        return makeProductEdit();
    case Place::ProductPick: {
        auto* screen = new ProductPickScreen(*m_around, m_folderLookedAt, this);
        connect(screen, &ProductPickScreen::chosen, this, &BenchWindow::readProduct);
        connect(screen, &ProductPickScreen::folderWanted, this, [this] {
            m_products.exporting = false;
            place(Place::ProductFolder);
        });
        return screen;
    }
    case Place::ProductFaults:
        return makeProductFaults(
            *m_around, m_products.path, m_products.faults, [this] { place(Place::ProductPick); }, this);
    default:
        break;
    }
    return makeProductFolder();
}

Screen* BenchWindow::makeProductPage()
{
    auto* screen = new ProductPageScreen(*m_around, m_products.id, std::exchange(m_products.told, {}), this);
    connect(screen, &ProductPageScreen::changeWanted, this, [this] {
        const std::vector<KeptSheet> versions = m_parts.bench.sheets().versions(m_products.id);
        m_products.isNew = false;
        editProduct(SheetDraft::of(versions.front().sheet), versions.front().sheet.source, Place::Product, false);
    });
    connect(screen, &ProductPageScreen::exportWanted, this, [this] {
        m_products.exporting = true;
        m_folderLookedAt = folderOfBackups();
        place(Place::ProductFolder);
    });
    connect(screen, &ProductPageScreen::layAsideWanted, this,
            [this] { askSupervisor(benchSubject(), SheetLaidAside{m_products.id}, Place::Product); });
    return screen;
}

Screen* BenchWindow::makeProductEdit()
{
    auto* screen = new ProductEditScreen(
        *m_around, {m_products.draft, m_products.isNew, takenSheetIds(), m_products.atTheEnd}, this);
    connect(screen, &ProductEditScreen::draftChanged, this, [this](const SheetDraft& draft) {
        m_products.draft = draft;
        m_products.file.clear();
    });
    connect(screen, &ProductEditScreen::keepWanted, this, [this](const QByteArray& typed) {
        const QByteArray bytes = m_products.file.isEmpty() ? typed : m_products.file;
        const QString id = m_products.draft.value(u"id"_s).toString();
        m_products.id = id;
        m_products.atTheEnd = true; // where 'back' from the PIN leads
        const SheetKept kept{id, QCryptographicHash::hash(bytes, QCryptographicHash::Sha256)};
        askSupervisor(benchSubject(), kept, Place::Product, {bytes});
    });
    return screen;
}

void BenchWindow::readProduct(const QString& path)
{
    m_products.path = path;
    const auto sheet = readSheetFile(path);
    if (!sheet) {
        m_products.faults = sheet.error();
        return place(Place::ProductFaults);
    }
    SheetDraft draft = SheetDraft::of(*sheet);
    QByteArray file = sheet->source;
    const bool known = !m_parts.bench.sheets().versions(sheet->id).empty();
    // An id of a sheet that is not the shop's own is not its to take: the sheet gets one from its name.
    if (!known && takenSheetIds().contains(sheet->id)) {
        draft.name(sheet->name, takenSheetIds());
        file.clear();
    }
    m_products.isNew = !known;
    editProduct(draft, file, Place::ProductPick, true);
}

Screen* BenchWindow::makeProductFolder()
{
    const bool exporting = m_products.exporting;
    return makeFolderScreen(
        *m_around, exporting ? tr("Into which folder does the sheet go?") : tr("In which folder is it?"),
        m_folderLookedAt,
        [this](const QString& folder) {
            m_folderLookedAt = folder;
            place(Place::ProductFolder);
        },
        [this, exporting](const QString& folder) {
            m_folderLookedAt = folder;
            if (exporting)
                return exportProduct(folder);
            place(Place::ProductPick);
        },
        this);
}

void BenchWindow::exportProduct(const QString& folder)
{
    const ProductSheet* sheet = m_parts.bench.planning().catalogue.byId(m_products.id);
    const QDir dir(folder);
    const QString stem = dir.filePath(asFileName(sheet->id));
    const auto write = [&](const QString& ending, const QByteArray& bytes) { return writeNew(stem + ending, bytes); };
    const auto written =
        write(u".json"_s, sheet->source).and_then([&] { return write(u".csv"_s, sheetToCsv(*sheet)); });
    //: %1 is a folder, %2 a file's name without its ending
    m_products.told =
        written
            ? tr("Written into %1: %2 as JSON and CSV.").arg(QDir::toNativeSeparators(folder), asFileName(sheet->id))
            : tr("Not written: %1").arg(written.error());
    place(Place::Product);
}

} // namespace strandbench
