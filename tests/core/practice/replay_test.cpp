// SPDX-License-Identifier: GPL-3.0-or-later
// Two ways through one panel on one axis.
#include "pupils.h"

#include "practice/replay.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

Replay replayed(const Lesson& lesson, const Attempt& attempt)
{
    return replayBeside(attempt, markOf(lesson, attempt).hand, lesson.truth, shop());
}

TEST(PracticeReplay, OfAPerfectPupilIsTheModelAnswersOwn)
{
    for (const Lesson& lesson : deliveredLessons()) {
        const Replay replay = replayed(lesson, perfectAttempt(lesson.truth, shop()));
        EXPECT_EQ(replay.pupil, replay.model);
        EXPECT_EQ(replay.model.empty(), !lesson.truth.fill());
    }
}

/// Nothing is done twice at a time, sanding never goes before its batch is mixed, and the end is the end.
TEST(PracticeReplay, IsInOrder)
{
    for (const Lesson& lesson : deliveredLessons()) {
        const std::vector<ReplayEntry> model = replayed(lesson, perfectAttempt(lesson.truth, shop())).model;
        Duration free = seconds(0);
        for (const ReplayEntry& each : model) {
            if (each.length.value() <= 0.0)
                continue;
            EXPECT_GE(inSeconds(each.start), inSeconds(free) - 1e-6);
            free = each.start + each.length;
        }
        const auto sandings = std::ranges::count(model, u"sand"_s, &ReplayEntry::code);
        EXPECT_EQ(sandings, static_cast<std::ptrdiff_t>(lesson.truth.plan.lifts.size()));
    }
}

/// Who waits longer before the edges is later at everything after it; who doses short gels later on the same axis.
TEST(PracticeReplay, ShowsWherePupilAndModelPart)
{
    const Lesson lesson = lessonOf(delivered(u"smc_corner"_s));
    Attempt slow = perfectAttempt(lesson.truth, shop());
    settle(slow, lesson.truth, 0.6);
    const Replay replay = replayed(lesson, slow);
    const auto gel = [](const std::vector<ReplayEntry>& all) {
        return std::ranges::find(all, u"gel"_s, &ReplayEntry::code)->start;
    };
    EXPECT_GT(gel(replay.pupil), gel(replay.model));
    const ReplayEntry& last = replay.pupil.back();
    EXPECT_EQ(replay.end, last.start + last.length);
    EXPECT_EQ(replay.pupil.front(), replay.model.front()); // both put the gear on
}

TEST(PracticeReplay, OfAnythingAtAllHasNoNegativeTime)
{
    std::mt19937_64 random{12};
    for (int round = 0; round < 5; ++round)
        for (const Lesson& lesson : deliveredLessons()) {
            const Replay replay = replayed(lesson, randomAttempt(lesson, random));
            for (const ReplayEntry& each : replay.pupil)
                EXPECT_GE(each.length.value(), 0.0);
            EXPECT_TRUE(std::isfinite(replay.end.value()));
        }
}

} // namespace
} // namespace strandbench::test
