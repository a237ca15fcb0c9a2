// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench cure: one cure case to its result.
#include "cure/solve.h"
#include "exchange/cure_json.h"
#include "headless/command.h"
#include "headless/input.h"

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

QString difficulty(const CureDifficulty& difficulty)
{
    const QString at = QString::number(inSeconds(difficulty.at), 'g', 6);
    switch (difficulty.kind) {
    case CureDifficulty::Kind::StepTooSmall:
        return say(QT_TRANSLATE_NOOP("Headless", "At %1 s the reaction runs away faster than time can be told apart."),
                   {at});
    case CureDifficulty::Kind::TooManySteps:
        break;
    }
    return say(QT_TRANSLATE_NOOP("Headless", "At %1 s the steps allowed were used up."), {at});
}

Outcome runCure(const Arguments& arguments, const Words& words)
{
    const Input input = readInput(arguments.file, words);
    if (!input.bytes)
        return input.failure;
    const Checked<CureCase> cureCase = readCureCase(*input.bytes);
    if (!cureCase)
        return refused(cureCase.error(), words);
    const CureOutcome outcome = solveCure(*cureCase);
    if (!outcome)
        return ended(Status::Trouble, difficulty(outcome.error()));
    return {Status::Done, cureResultToJson(*outcome), {}};
}

} // namespace

Command cureCommand()
{
    return {"cure", QT_TRANSLATE_NOOP("Headless", "Solves the cure case in FILE."), true, {}, runCure};
}

} // namespace strandbench::headless
