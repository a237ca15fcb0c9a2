// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_assumptions.h"

#include "theme/sizes.h"
#include "words/role_words.h"

#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t perPage = 6;
constexpr std::size_t elsewhere = 2;
constexpr TextSize figureSize{5.4, 3.6}; // mm: three rows with names of two lines on a low glass

} // namespace

SetUpAssumptionsScreen::SetUpAssumptionsScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpScreen(around, u"screen_set_up_assumptions"_s, place, parent), m_say(around.words)
{
    const std::vector<AssumptionEntry>& table = assumptionTable();
    const std::size_t count = table.size() + elsewhere;
    const int pages = static_cast<int>((count + perPage - 1) / perPage);
    QWidget* holder =
        buildPage(tr("ours: no source; published: from a table"), tr("Tap an assumption to change it"), pages);
    auto* grid = new QGridLayout(holder);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const std::size_t columns = around.upright ? 1 : 2;
    const std::size_t first = static_cast<std::size_t>(page()) * perPage;
    for (std::size_t i = 0; i < perPage; ++i) {
        const int line = static_cast<int>(i / columns);
        grid->setRowStretch(line, 1);
        grid->setColumnStretch(static_cast<int>(i % columns), 1);
        const std::size_t at = first + i;
        if (at < count)
            grid->addWidget(at < table.size() ? row(table[at]) : keptElsewhere(at - table.size()), line,
                            static_cast<int>(i % columns));
    }
}

TapButton* SetUpAssumptionsScreen::row(const AssumptionEntry& entry)
{
    const Assumptions& now = around().bench.assumptions();
    const bool changed = !entry.isDefault(now);
    const QString figure = m_say.figure(entry, entry.numberOf(now));
    const QString fallback = m_say.figure(entry, entry.number(entry.byDefault()));
    const QString name = AssumptionWords::name(entry.code);
    //: a row of the assumptions that was changed: "60 s, was 45 s"
    const QString title = changed ? tr("%1, was %2").arg(figure, fallback) : figure;
    TapButton* made = key(u"assumption_"_s + entry.code, TapButton::Kind::Plain, title,
                          name + u" · "_s + (entry.published ? tr("published") : tr("ours")));
    made->setTitleSize(figureSize);
    made->setAccessibleName(name + u", "_s + title);
    made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    made->setMarked(changed);
    connect(made, &TapButton::clicked, this, [this, code = entry.code] {
        Q_EMIT placeWanted({SetUpGroup::Assumptions, page(), code});
    });
    return made;
}

TapButton* SetUpAssumptionsScreen::keptElsewhere(std::size_t index)
{
    const bool nozzle = index == 0;
    const auto bead = around().bench.bead();
    const QString onSheet = bead ? beadMassText(bead->bead.mean, words()) : tr("on each sheet");
    TapButton* made = key(nozzle ? u"assumption_nozzle"_s : u"assumption_hands_on"_s, TapButton::Kind::Plain,
                          nozzle ? onSheet : tr("in each step"),
                          nozzle ? tr("Hardener for a length of bead: the nozzle’s") : tr("Hands-on times"));
    made->setTitleSize(figureSize);
    made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    made->setEnabled(false);
    return made;
}

} // namespace strandbench
