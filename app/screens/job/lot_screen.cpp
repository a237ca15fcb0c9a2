// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/lot_screen.h"

#include "screens/stock/lot_page_screen.h"
#include "screens/job/mix_screen.h"
#include "theme/sizes.h"
#include "touch/hold_button.h"
#include "words/sheet_words.h"
#include "words/stock_words.h"

#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t tilesWide = 4; // a lot of 24 characters takes two lines in a quarter of the glass
constexpr std::size_t tilesUpright = 6;

} // namespace

LotScreen::LotScreen(const Surroundings& around, const Repair& repair, BatchRef ref, const QString& asked,
                     QWidget* parent)
    : Screen(around, u"screen_lots"_s, parent), m_repair(repair), m_ref(ref), m_asked(asked)
{
    buildFrame(contextOf(repair, words()) + u" · "_s + batchContext(repair, ref, words()), {});
    disconnect(answers(), &AnswerBar::backTapped, this, &Screen::backTapped);
    connect(answers(), &AnswerBar::backTapped, this, &LotScreen::back);
    connect(answers(), &AnswerBar::wayOnTapped, this, &LotScreen::wayOn);
    if (!inhand::lotInUse(around.settings, keyOf(Part::Filler)).isEmpty() &&
        inhand::lotInUse(around.settings, hardenerKey).isEmpty())
        m_part = Part::Hardener;
    show(asked.isEmpty() ? Page::Tiles : Page::Asking);
}

BatchInHand LotScreen::batch() const { return inhand::batchInUse(m_repair, m_ref, around()); }

QString LotScreen::keyOf(Part part) const
{
    const BatchInHand inHand = batch();
    return part == Part::Hardener ? hardenerKey : inHand.sheet ? inHand.sheet->id : sheetIdOf(*m_repair.plan, m_ref);
}

void LotScreen::showLater(Page page)
{
    // The page goes once the tap on one of its keys has been handled.
    QMetaObject::invokeMethod(
        this, [this, page] { show(page); }, Qt::QueuedConnection);
}

void LotScreen::show(Page page)
{
    m_page = page;
    m_keys = nullptr;
    delete m_body;
    m_body = new QWidget(this);
    auto* column = new QVBoxLayout(m_body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(sizes::gap));
    content()->addWidget(m_body, 1);
    switch (page) {
    case Page::Tiles:
        setSentence(m_part == Part::Product  ? tr("Which product is in your hand?")
                    : m_part == Part::Filler ? tr("Which lot of filler is open?")
                                             : tr("Which lot of hardener is open?"));
        column->addWidget(parts());
        column->addWidget(tiles(), 1);
        answers()->setWayOn(tr("These are in hand"));
        break;
    case Page::Typing:
        setSentence(m_part == Part::Filler ? tr("Key in or scan the lot of filler")
                                           : tr("Key in or scan the lot of hardener"));
        answers()->setWayOn(tr("Take this lot"));
        m_keys = new LotKeys(around(), m_body);
        column->addWidget(m_keys, 1);
        connect(m_keys, &LotKeys::textChanged, this, &LotScreen::typed);
        connect(m_keys, &LotKeys::entered, this, &LotScreen::takeTyped);
        m_keys->setText(m_typed);
        m_keys->setFocus();
        break;
    case Page::Asking:
        setSentence(tr("Scanned: lot %1. What is it?").arg(inhand::shownLot(m_asked)));
        column->addWidget(asking(), 1);
        answers()->setWayOn({});
        break;
    }
}

QWidget* LotScreen::parts()
{
    auto* bar = new QWidget(m_body);
    const auto told = [this](Part part) {
        const QString lot = inhand::lotInUse(around().settings, keyOf(part));
        return lot.isEmpty() ? tr("not told") : inhand::shownLot(lot);
    };
    const BatchInHand inHand = batch();
    lay(bar,
        {partKey(Part::Product, u"part_product"_s, tr("Product"),
                 inHand.sheet ? SheetWords::sheetName(*inHand.sheet) : tr("its sheet is not loaded")),
         partKey(Part::Filler, u"part_filler"_s, tr("Lot of filler"), told(Part::Filler)),
         partKey(Part::Hardener, u"part_hardener"_s, tr("Lot of hardener"), told(Part::Hardener)),
         makeLotPageKey(around(), inHand, m_body, [this](const LotOfProduct& lot) { Q_EMIT pageWanted(lot); })},
        around().upright ? 2 : 4);
    return bar;
}

TapButton* LotScreen::partKey(Part part, const QString& name, const QString& title, const QString& second)
{
    auto* key = new TapButton(theme(), name, TapButton::Kind::Quiet, m_body);
    key->setTitle(title);
    key->setSecondLine(second);
    key->setTitleSize({4.6, 3.4});
    key->setMarked(part == m_part);
    key->setFixedHeight(px(sizes::target));
    connect(key, &TapButton::clicked, this, [this, part] {
        m_part = part;
        m_first = 0;
        showTrouble({}, {});
        showLater(Page::Tiles);
    });
    return key;
}

std::vector<LotScreen::Tile> LotScreen::products()
{
    std::vector<Tile> all;
    const BatchInHand inHand = batch();
    const FillerClass filler = fillerOf(*m_repair.plan, m_ref);
    const QString& planned = sheetIdOf(*m_repair.plan, m_ref);
    for (const ProductSheet& each : around().bench.planning().catalogue.sheets()) {
        if (each.fillerClass != filler)
            continue;
        all.push_back({u"product_"_s + each.id, SheetWords::sheetName(each),
                       each.id == planned ? tr("planned with") : QString(), inHand.sheet && inHand.sheet->id == each.id,
                       [this, id = each.id] { use(id); }});
    }
    return all;
}

std::vector<LotScreen::Tile> LotScreen::lots()
{
    std::vector<Tile> all;
    const QString key = keyOf(m_part);
    const QString inUse = inhand::lotInUse(around().settings, key);
    int number = 0;
    for (const QString& each : inhand::lotsAtHand(key, around())) {
        const StockState* shelf = around().bench.stock().ledger().of({key, each});
        QStringList second;
        if (each == inUse)
            second << tr("in use");
        if (shelf)
            second << (shelf->ended ? tr("ended") : tr("%1 left").arg(stockMass(shelf->left(), words())));
        all.push_back({u"lot_%1"_s.arg(number), inhand::shownLot(each), second.join(u" · "_s), each == inUse,
                       [this, key, each] { take(key, each); }});
        ++number;
    }
    return all;
}

TapButton* LotScreen::makeTile(const Tile& tile, QWidget* parent)
{
    auto* key = new TapButton(theme(), tile.name, TapButton::Kind::Choice, parent);
    key->setTitle(tile.title);
    key->setSecondLine(tile.second);
    key->setTitleSize({6, 3.4});
    key->setCheckable(true);
    key->setChecked(tile.chosen);
    connect(key, &TapButton::clicked, this, [key, tapped = tile.tapped, chosen = tile.chosen] {
        key->setChecked(chosen);
        tapped();
    });
    return key;
}

QWidget* LotScreen::tiles()
{
    auto* page = new QWidget(m_body);
    const std::vector<Tile> all = m_part == Part::Product ? products() : lots();
    const bool removable = m_part != Part::Product && !inhand::lotInUse(around().settings, keyOf(m_part)).isEmpty();
    std::size_t room = around().upright ? tilesUpright : tilesWide;
    if (m_part != Part::Product)
        room -= removable ? 2 : 1; // 'another lot', and 'remove this lot'
    const bool paged = all.size() > room;
    if (paged)
        --room;
    std::vector<QWidget*> shown;
    const std::size_t last = std::min(all.size(), m_first + room);
    for (std::size_t i = m_first; i < last; ++i)
        shown.push_back(makeTile(all[i], page));
    const auto key = [&](const QString& name, const QString& title, auto tapped) {
        auto* made = new TapButton(theme(), name, TapButton::Kind::Quiet, page);
        made->setTitle(title);
        connect(made, &TapButton::clicked, this, tapped);
        shown.push_back(made);
    };
    if (paged)
        key(u"more_lots"_s, tr("More"), [this, next = last < all.size() ? last : 0] {
            m_first = next;
            showLater(Page::Tiles);
        });
    if (m_part != Part::Product)
        key(u"another_lot"_s, tr("Another lot"), [this] {
            m_typed.clear();
            showTrouble({}, {});
            showLater(Page::Typing);
        });
    if (removable)
        shown.push_back(removeKey(page));
    lay(page, shown, around().upright ? 2 : static_cast<int>(tilesWide));
    return page;
}

QWidget* LotScreen::removeKey(QWidget* parent)
{
    auto* key = new HoldButton(theme(), u"remove_lot"_s, TapButton::Kind::Stop, parent);
    const QString of = keyOf(m_part);
    const QString lot = inhand::lotInUse(around().settings, of);
    key->setTitle(tr("Remove lot %1").arg(inhand::shownLot(lot)));
    key->setSecondLine(tr("hold 1 s"));
    key->setTitleSize({5, 3.4});
    connect(key, &HoldButton::held, this, [this, of, lot] {
        Settings wanted = around().settings;
        inhand::removeLot(wanted, of, lot);
        m_first = 0;
        Q_EMIT settingsWanted(wanted);
        showLater(Page::Tiles);
    });
    return key;
}

void LotScreen::lay(QWidget* page, const std::vector<QWidget*>& tiles, int columns)
{
    auto* grid = new QGridLayout(page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    for (int i = 0; i < static_cast<int>(tiles.size()); ++i) {
        grid->addWidget(tiles[static_cast<std::size_t>(i)], i / columns, i % columns);
        grid->setRowStretch(i / columns, 1);
    }
    for (int i = 0; i < columns; ++i)
        grid->setColumnStretch(i, 1);
}

QWidget* LotScreen::asking()
{
    auto* page = new QWidget(m_body);
    std::vector<QWidget*> keys;
    for (const Part part : {Part::Filler, Part::Hardener}) {
        auto* key = new TapButton(theme(), part == Part::Filler ? u"it_is_filler"_s : u"it_is_hardener"_s,
                                  TapButton::Kind::Plain, page);
        key->setTitle(part == Part::Filler ? tr("Filler") : tr("Hardener"));
        if (part == Part::Filler)
            key->setSecondLine(inhand::productName(batch(), m_repair, around()));
        connect(key, &TapButton::clicked, this, [this, part] {
            m_part = part;
            take(keyOf(part), m_asked);
        });
        keys.push_back(key);
    }
    lay(page, keys, 2);
    return page;
}

void LotScreen::typed(const QString& text)
{
    m_typed = text;
    showTrouble({}, {});
    answers()->setWayOnEnabled(!text.trimmed().isEmpty());
}

void LotScreen::takeTyped()
{
    const Checked<QString> lot = inhand::readLot(m_typed);
    if (!lot)
        return showTrouble(words().fault(lot.error().front()), {});
    take(keyOf(m_part), *lot);
}

void LotScreen::take(const QString& key, const QString& lot)
{
    Settings wanted = around().settings;
    inhand::useLot(wanted, key, lot);
    m_typed.clear();
    m_asked.clear();
    m_first = 0;
    showTrouble({}, {});
    Q_EMIT settingsWanted(wanted);
    // What is still not told comes next.
    if (key != hardenerKey && inhand::lotInUse(around().settings, hardenerKey).isEmpty())
        m_part = Part::Hardener;
    showLater(Page::Tiles);
}

void LotScreen::use(const QString& sheet)
{
    Settings wanted = around().settings;
    wanted.products[codeOf(fillerOf(*m_repair.plan, m_ref))] = sheet;
    showTrouble({}, {});
    Q_EMIT settingsWanted(wanted);
    m_part = Part::Filler; // another product, another tub
    m_first = 0;
    showLater(Page::Tiles);
}

bool LotScreen::scanned(const QString& text)
{
    const Checked<QString> lot = inhand::readLot(text);
    if (!lot) {
        showTrouble(words().fault(lot.error().front()), {});
        return true;
    }
    if (m_page == Page::Typing) {
        take(keyOf(m_part), *lot);
        return true;
    }
    const QString of = inhand::knownAs(*lot, batch(), around());
    if (of.isEmpty()) {
        m_asked = *lot;
        showLater(Page::Asking);
    } else if (of != hardenerKey && of != keyOf(Part::Filler)) {
        use(of);
        take(of, *lot);
    } else {
        take(of, *lot);
    }
    return true;
}

void LotScreen::wayOn()
{
    if (m_page == Page::Typing)
        takeTyped();
    else
        Q_EMIT backTapped(); // to the mix
}

void LotScreen::back()
{
    if (m_page == Page::Tiles)
        Q_EMIT backTapped();
    else
        showLater(Page::Tiles);
}

QVariantMap LotScreen::draft() const
{
    if (m_page != Page::Typing || m_typed.isEmpty())
        return {};
    return {{u"typed"_s, m_typed}, {u"part"_s, static_cast<int>(m_part)}};
}

void LotScreen::setDraft(const QVariantMap& draft)
{
    m_part = static_cast<Part>(draft.value(u"part"_s).toInt());
    m_typed = draft.value(u"typed"_s).toString();
    show(Page::Typing);
}

} // namespace strandbench
