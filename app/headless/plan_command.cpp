// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench plan: a repair description to the whole plan.
#include "exchange/plan_json.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "headless/command.h"
#include "headless/input.h"
#include "plan/planner.h"

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

Outcome runPlan(const Arguments& arguments, const Words& words)
{
    const Input input = readInput(arguments.file, words);
    if (!input.bytes)
        return input.failure;
    const Checked<Assessment> assessment = readAssessment(*input.bytes);
    if (!assessment)
        return refused(assessment.error(), words);

    const CureEngine engine;
    const RepairPlan plan = planRepair(*assessment, {builtInTable(), demoCatalogue(), builtInSteps(), {}, engine});
    const PlanTexts texts{[&](const Reason& reason) { return words.reason(reason); },
                          [&](const Step& step) {
                              const StepText text = words.step(step);
                              return text.sentence + u". "_s + text.detail;
                          }};
    return {Status::Done, planToJson(plan, texts), {}};
}

} // namespace

Command planCommand()
{
    return {"plan", QT_TRANSLATE_NOOP("Headless", "Plans the repair that FILE describes."), true, {}, runPlan};
}

} // namespace strandbench::headless
