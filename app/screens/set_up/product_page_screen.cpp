// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/product_page_screen.h"

#include "screens/set_up/keeping_screens.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"
#include "touch/hold_button.h"
#include "words/sheet_words.h"

#include <QGridLayout>

#include <memory>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t versionsShown = 3;
constexpr double keyHeight = 14; // mm

/// Whole minutes from an hour on.
QString timeText(const std::optional<Duration>& time, const Words& words)
{
    if (!time)
        return u"–"_s;
    return *time < minutes(60) ? words.duration(*time) : words.longDuration(*time);
}

} // namespace

ProductOutlook::ProductOutlook(const Surroundings& around, QWidget* parent)
    : QWidget(parent), m_around(around), m_worker(around.bench.computing())
{
    setObjectName(u"product_outlook"_s);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    clear();
}

void ProductOutlook::clear()
{
    delete m_inside;
    auto* inside = new Card(m_around.theme, this);
    m_inside = inside;
    layout()->addWidget(inside);
}

FitLabel* ProductOutlook::cell(const QString& name, TextRole role, const QString& text, Role ink, bool bold)
{
    auto* made = new FitLabel(m_around.theme, name, role, m_inside);
    made->setRole(ink);
    made->setBold(bold);
    made->setText(text);
    return made;
}

void ProductOutlook::showNone(const QString& why)
{
    clear();
    auto* column = new QVBoxLayout(m_inside);
    column->addWidget(cell(u"outlook_none"_s, TextRole::Body, why));
    m_inside->show();
}

void ProductOutlook::show(const ProductSheet& sheet)
{
    showNone(tr("One moment: the engine works out what this sheet means …"));
    m_worker.ask([this, sheet, engine = m_around.bench.planning().engine.with(CureRates{})]() -> Worker::Show {
        const auto found = std::make_shared<CureAnswer<SheetOutlook>>(outlookOf(sheet, engine));
        return [this, sheet, found] {
            showFigures(sheet, *found);
            Q_EMIT shown(found->has_value());
        };
    });
}

void ProductOutlook::showFigures(const ProductSheet& sheet, const CureAnswer<SheetOutlook>& found)
{
    const Words& words = m_around.words;
    if (!found)
        return showNone(words.reason(found.error()));
    clear();
    const int px = m_around.theme.px(2);
    auto* grid = new QGridLayout(m_inside);
    grid->setContentsMargins(px, px, px, px);
    grid->setSpacing(px / 2);
    const QStringList heads{tr("at"), tr("gels after"), tr("sands after"), tr("greatest lift")};
    for (int i = 0; i < heads.size(); ++i)
        grid->addWidget(cell(u"outlook_head_%1"_s.arg(i), TextRole::Small, heads.at(i), Role::MutedInk), 0, i);
    int row = 0;
    for (const SheetOutlook::At& each : found->at) {
        const auto put = [&, at = row + 1](int column, const QString& name, const QString& text) {
            grid->addWidget(cell(u"outlook_%1_%2"_s.arg(name).arg(at - 1), TextRole::Body, text, Role::Ink, column > 0),
                            at, column);
        };
        const bool beyond = each.greatest && *each.greatest >= found->looked * (1 - 1e-9);
        const QString lift = each.greatest ? words.fineLength(*each.greatest) : tr("none");
        put(0, u"at"_s, words.temperature(each.temperature));
        put(1, u"gel"_s, timeText(each.gel, words));
        put(2, u"sand"_s, timeText(each.sand, words));
        //: a lift: "20 mm or more"
        put(3, u"lift"_s, beyond ? tr("%1 or more").arg(lift) : lift);
        grid->setRowStretch(++row, 1);
    }
    const QString note =
        tr("Reckoned on the sheet’s own test pieces, its peak below %1. The sheet allows %2 in one go; "
           "the lower of the two holds.")
            .arg(words.temperature(sheet.peakLimit), words.fineLength(sheet.greatestLift));
    grid->addWidget(cell(u"outlook_note"_s, TextRole::Small, note, Role::MutedInk), row + 1, 0, 1, 4);
    grid->setRowStretch(row + 1, 2);
    m_inside->show();
}

ProductPageScreen::ProductPageScreen(const Surroundings& around, const QString& sheetId, const QString& told,
                                     QWidget* parent)
    : Screen(around, u"screen_set_up_product_page"_s, parent)
{
    const ProductSheet* sheet = around.bench.planning().catalogue.byId(sheetId);
    buildFrame(tr("Product sheets") + u" · "_s + SheetWords::sheetName(*sheet),
               tr("What the engine makes of this sheet"));
    answers()->stop()->hide();
    auto* outlook = new ProductOutlook(around, this);
    content()->addWidget(outlook, 3);
    buildSide(*sheet, told);
    outlook->show(*sheet);
    const bool own = !around.bench.sheets().versions(sheetId).empty();
    answers()->setWayOn(own ? tr("Change this sheet") : QString());
    answers()->setWayOnEnabled(own && !around.bench.looksOnly());
    connect(answers(), &AnswerBar::wayOnTapped, this, &ProductPageScreen::changeWanted);
}

QString ProductPageScreen::statedText(const ProductSheet& sheet) const
{
    const auto range = [&](const StatedTime& time) {
        //: a stated time with its range: "5 min (4 to 6)"
        return tr("%1 min (%2 to %3)")
            .arg(words().locale().toString(inMinutes(time.nominal)), words().locale().toString(inMinutes(time.early)),
                 words().locale().toString(inMinutes(time.late)));
    };
    return tr("It states, at %1: working time %2, sands after %3.")
        .arg(words().temperature(sheet.reference), range(sheet.working), range(sheet.sanding));
}

QString ProductPageScreen::versionsText(const QString& sheetId) const
{
    const std::vector<KeptSheet> versions = around().bench.sheets().versions(sheetId);
    QStringList lines;
    for (std::size_t i = 0; i < std::min(versions.size(), versionsShown); ++i)
        //: a version of a sheet: %1 when, %2 who
        lines << tr("%1 by %2")
                     .arg(momentText(versions[i].at.utcMs, words()),
                          versions[i].person.isEmpty() ? tr("nobody told") : versions[i].person);
    if (versions.size() > versionsShown)
        lines << tr("and %n earlier", nullptr, static_cast<int>(versions.size() - versionsShown));
    return lines.join(u'\n');
}

void ProductPageScreen::buildSide(const ProductSheet& sheet, const QString& told)
{
    const SheetBook& book = around().bench.sheets();
    const bool own = !book.versions(sheet.id).empty();
    auto* side = new QVBoxLayout;
    side->setSpacing(px(sizes::gap));
    auto* box = card(u"product_facts"_s);
    auto* lines = new FitColumn;
    box->setLayout(lines);
    lines->setContentsMargins(px(2), px(1), px(2), px(1));
    if (!told.isEmpty())
        lines->addText(label(u"product_told"_s, TextRole::Body, told, Role::Ink, true));
    if (sheet.demo)
        lines->addText(label(u"product_demo"_s, TextRole::Body,
                             tr("Demo sheet: invented values. Type in the sheet of the tub in your hand."), Role::Ink,
                             true));
    lines->addText(label(u"product_stated"_s, TextRole::Body, statedText(sheet)));
    if (own)
        lines->addText(label(u"product_versions"_s, TextRole::Small,
                             (book.inUse(sheet.id) ? tr("Versions:") : tr("Laid aside. Versions:")) + u'\n' +
                                 versionsText(sheet.id),
                             Role::MutedInk));
    side->addWidget(box, 1);
    auto* keys = new QHBoxLayout;
    keys->setSpacing(px(sizes::gap));
    auto* give = new TapButton(theme(), u"export_sheet"_s, TapButton::Kind::Plain, this);
    give->setTitle(tr("Write to a folder"));
    give->setTitleSize({4.6, 3.4});
    give->setLeastSize(sizes::denseTarget, keyHeight);
    connect(give, &TapButton::clicked, this, &ProductPageScreen::exportWanted);
    keys->addWidget(give, 1);
    if (own && book.inUse(sheet.id) && !around().bench.looksOnly()) {
        auto* aside = new HoldButton(theme(), u"lay_aside"_s, TapButton::Kind::Stop, this);
        aside->setTitle(tr("Lay aside"));
        aside->setSecondLine(tr("hold 1 s"));
        aside->setTitleSize({4.6, 3.4});
        aside->setLeastSize(sizes::denseTarget, keyHeight);
        connect(aside, &HoldButton::held, this, &ProductPageScreen::layAsideWanted);
        keys->addWidget(aside, 1);
    }
    side->addLayout(keys);
    content()->addLayout(side, 2);
}

} // namespace strandbench
