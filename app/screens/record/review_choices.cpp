// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/review_choices.h"

#include "screens/frame/choice_screen.h"
#include "theme/sizes.h"
#include "words/review_words.h"
#include "words/role_words.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(ReviewChoices)
};

} // namespace

Screen* makeNarrowByScreen(const Surroundings& around, const QString& context,
                           const std::function<void(NarrowBy)>& chosen, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_narrow_by"_s;
    spec.context = context;
    spec.sentence = Says::tr("Which repairs of the day?");
    spec.ofARepair = false;
    spec.moreTitle = Says::tr("More");
    for (const auto& [by, code] : Codes<NarrowBy>::table)
        spec.tiles.push_back(
            {u"narrow_"_s + QString::fromLatin1(code), narrowName(by), {}, {}, false, false, [chosen, by = by] {
                 chosen(by);
             }});
    return new ChoiceScreen(around, std::move(spec), parent);
}

NarrowValueScreen::NarrowValueScreen(const Surroundings& around, const QString& context, NarrowBy by,
                                     const std::vector<RepairDigest>& repairs, const QString& ownBench, QWidget* parent)
    : Screen(around, u"screen_narrow_value"_s, parent)
{
    buildFrame(context, narrowName(by));
    answers()->stop()->hide();
    answers()->setWayOn({});
    auto* rows = new PagedRows(around, sizes::target, this);
    content()->addWidget(rows, 1);
    std::vector<PagedRows::MakeRow> all;
    for (const auto& [value, count] : valuesOf(repairs, by)) {
        const Narrowing narrowing{by, value};
        const QString text = narrowValue(narrowing, around.bench.planning().catalogue, ownBench, words());
        all.push_back([this, narrowing, text, count = count, index = all.size()](QWidget* into) -> QWidget* {
            auto* row = new TapButton(theme(), u"narrow_value_%1"_s.arg(index), TapButton::Kind::Plain, into);
            row->setTitle(text);
            row->setSecondLine(Says::tr("%n repair(s)", nullptr, count));
            connect(row, &TapButton::clicked, this, [this, narrowing, text] { Q_EMIT chosen(narrowing, text); });
            return row;
        });
    }
    if (all.empty())
        content()->addWidget(label(u"narrow_none"_s, TextRole::Body, Says::tr("No repair of that day has one.")), 1);
    rows->setVisible(!all.empty());
    rows->setRows(std::move(all));
}

Screen* makeReturnWhyScreen(const Surroundings& around, const QString& context,
                            const std::function<void(const QString&)>& chosen, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_return_why"_s;
    spec.context = context;
    spec.sentence = Says::tr("Why is it returned?");
    spec.ofARepair = false;
    spec.moreTitle = Says::tr("More reasons");
    for (const QString& code : returnReasons())
        spec.tiles.push_back(
            {u"return_"_s + code, returnReason(code), {}, {}, false, false, [chosen, code] { chosen(code); }});
    return new ChoiceScreen(around, std::move(spec), parent);
}

} // namespace strandbench
