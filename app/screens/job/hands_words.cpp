// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/hands_words.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench::hands {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(Hands)
};

QString jobOf(const QUuid& id, const Surroundings& around) { return around.bench.repair(id)->job; }

/// What a running job wants of the hands.
QString wants(const HandsNeeded& other, const Surroundings& around)
{
    const QString job = jobOf(other.repair, around);
    const bool now = other.span.from < seconds(1);
    const Words& words = around.words;
    switch (other.span.act) {
    case HandAct::Spread:
        return Says::tr("Hands: job %1 is still being spread.").arg(job);
    case HandAct::Edges:
        return now ? Says::tr("Hands: job %1 needs its edges cleared now.").arg(job)
                   : Says::tr("Hands: job %1 needs its edges cleared in %2.").arg(job, words.duration(other.span.from));
    case HandAct::Sand:
        break;
    }
    return Says::tr("Hands: job %1 sands easily only until %2.")
        .arg(job, words.clockTime(around.bench.clock().now(), other.span.to));
}

QString actName(HandAct act)
{
    switch (act) {
    case HandAct::Spread:
        return Says::tr("spread it");
    case HandAct::Edges:
        return Says::tr("clear the edges");
    case HandAct::Sand:
        break;
    }
    return Says::tr("sand it");
}

const HandsNeeded& otherSide(const HandsCollide& collision, const QUuid& own)
{
    return collision.first.repair == own ? collision.second : collision.first;
}

} // namespace

std::vector<HandsOf> onBench(const Bench& bench)
{
    std::vector<HandsOf> all;
    const Instant now = bench.clock().now();
    for (const Repair* each : bench.openRepairs())
        for (HandsOf& batch : handsOf(*each, bench.assumptions(), now))
            all.push_back(std::move(batch));
    return all;
}

QUuid otherOf(const HandsCollide& collision, const QUuid& own) { return otherSide(collision, own).repair; }

QString holdBack(const HoldBack& hold, const QUuid& own, const Surroundings& around)
{
    const Instant now = around.bench.clock().now();
    return wants(otherSide(hold.collision, own), around) + u' ' +
           Says::tr("Hold this batch back until %1: %2 to go.")
               .arg(around.words.clockTime(now, hold.delay), around.words.duration(hold.delay));
}

QString collision(const HandsCollide& collision, const Surroundings& around)
{
    const QString first = jobOf(collision.first.repair, around);
    const QString second = jobOf(collision.second.repair, around);
    const QString act = actName(collision.first.span.act);
    if (collision.at < seconds(1))
        return Says::tr("Two jobs need hands now: first job %1, %2, then job %3.").arg(first, act, second);
    //: %1 is a time, mm:ss; %2 and %4 job numbers; %3 what to do with the first
    return Says::tr("In %1 two jobs need hands: first job %2, %3, then job %4.")
        .arg(around.words.duration(collision.at), first, act, second);
}

MixBlockText blockText(const RunningMix& mix, const std::optional<HandsCollide>& collision, const Bench& bench,
                       const Words& words)
{
    const bool open = mix.face.phase == Phase::Harder;
    MixBlockText text{bench.repair(mix.repair)->job, words.phase(mix.face.phase),
                      words.duration(open ? mix.face.sinceHardener : mix.face.toNextPhase)};
    const auto is = [&](const HandsNeeded& side) { return side.repair == mix.repair && side.batch == mix.run.batch; };
    if (collision && is(collision->first))
        text.turn = 1;
    else if (collision && is(collision->second))
        text.turn = 2;
    if (text.turn > 0)
        text.spokenTurn = Says::tr("two jobs need hands, turn %1").arg(text.turn);
    return text;
}

QString mixHold(const Reason& reason, const Words& words)
{
    if (reason.code == u"too_hot_for_lift"_s)
        return Says::tr("Too hot for this lift: %1 of %2. Let the panel cool and read again.")
            .arg(words.fineTemperature(std::get<Temperature>(reason.arguments[0])),
                 words.fineTemperature(std::get<Temperature>(reason.arguments[1])));
    if (reason.code == u"lift_over_product"_s)
        return Says::tr("Too thick for this product: %1 of %2. Choose the product planned with.")
            .arg(words.fineLength(std::get<Length>(reason.arguments[0])),
                 words.fineLength(std::get<Length>(reason.arguments[1])));
    if (reason.code == u"product_cure_unknown"_s)
        return Says::tr("The cure of this product cannot be worked out. Choose the product planned with.");
    return Says::tr("Not this product here: %1 Choose the product planned with.").arg(words.reason(reason));
}

} // namespace strandbench::hands
