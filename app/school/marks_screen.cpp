// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/marks_screen.h"

#include "screens/frame/side_key.h"
#include "theme/sizes.h"
#include "words/practice_words.h"

using namespace Qt::StringLiterals;

namespace strandbench {

MarksScreen::MarksScreen(const Surroundings& around, const PracticePanel& panel, const std::optional<Marking>& marking,
                         QWidget* parent)
    : Screen(around, u"screen_practice_marks"_s, parent)
{
    QStringList traps;
    for (const TrapKind each : panel.traps)
        traps << trapTold(each);
    buildFrame(traps.isEmpty() ? tr("Practice panel") : traps.join(u' '),
               marking ? outcomeTold(marking->outcome) : tr("Working out what it comes to …"));
    answers()->stop()->hide();
    answers()->setWayOn(marking ? tr("Done") : QString());
    connect(answers(), &AnswerBar::wayOnTapped, this, &MarksScreen::doneTapped);
    if (!marking)
        return;
    auto* rows = new PagedRows(around, sizes::target, this);
    std::vector<PagedRows::MakeRow> all;
    for (const Judged wanted : {Judged::Wrong, Judged::Right, Judged::NotReached}) // what teaches comes first
        for (std::size_t i = 0; i < marking->marks.size(); ++i)
            if (marking->marks[i].judged == wanted)
                all.push_back(rowOf(marking->marks[i], i));
    content()->addWidget(rows, 1);
    content()->addWidget(makeSideKey(
        theme(),
        {u"replay"_s, tr("Replay"), tr("beside the model answer"), Pictogram::None, [this] { Q_EMIT replayTapped(); }},
        this));
    rows->setRows(std::move(all));
}

PagedRows::MakeRow MarksScreen::rowOf(const Mark& mark, std::size_t index)
{
    QString second;
    switch (mark.judged) {
    case Judged::Right:
        second = tr("right");
        break;
    case Judged::Wrong:
        second = mark.consequence ? consequenceTold(mark.consequence->what, words()) : ruleTold(mark, words());
        break;
    case Judged::NotReached:
        second = tr("not reached");
        break;
    }
    const QString title = decisionTold(mark, words());
    const Pictogram sign = mark.judged == Judged::Right   ? Pictogram::Tick
                           : mark.judged == Judged::Wrong ? (mark.grave ? Pictogram::StopHand : Pictogram::Caution)
                                                          : Pictogram::None;
    return [this, title, second, sign, index](QWidget* parent) -> QWidget* {
        auto* row = new TapButton(theme(), u"mark_%1"_s.arg(index), TapButton::Kind::Plain, parent);
        row->setTitle(title);
        row->setSecondLine(second);
        row->setSign(sign);
        connect(row, &TapButton::clicked, this, [this, index] { Q_EMIT markTapped(index); });
        return row;
    };
}

} // namespace strandbench
