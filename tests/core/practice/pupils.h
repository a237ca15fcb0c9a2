// SPDX-License-Identifier: GPL-3.0-or-later
// Scripted pupils: one who does everything right, one for every single mistake, and one who taps at random.
#pragma once

#include "shop.h"

#include "practice/marking.h"

#include <random>

namespace strandbench::test {

/// A panel and what core makes of it, computed once.
struct Lesson {
    const PracticePanel& panel;
    ModelAnswer truth;
};
[[nodiscard]] Lesson lessonOf(const PracticePanel& panel);
[[nodiscard]] const std::vector<Lesson>& deliveredLessons();

[[nodiscard]] Marking markOf(const Lesson& lesson, const Attempt& attempt);

/// An attempt with one mistake in it; everything after it is right from there on.
struct Mistake {
    std::string name;
    DecisionPoint decision = DecisionPoint::SubstrateFound;
    QStringList consequences; ///< codes, one of which is to be seen
    Attempt attempt;
};
/// Every single mistake that this panel leaves room for.
[[nodiscard]] std::vector<Mistake> singleMistakes(const Lesson& lesson);

/// Batches, edges and sanding anew, as they are right for the lifts and doses in the attempt. Shares are of nominal.
void settle(Attempt& attempt, const ModelAnswer& answer, double doseShare = 1.0, double amountShare = 1.0);

/// Anything that fingers can do, sense or not.
[[nodiscard]] Attempt randomAttempt(const Lesson& lesson, std::mt19937_64& random);

/// Fails where a mark, its rule or its consequence is not as the tables of codes have it.
void expectWellFormed(const Marking& marking);
[[nodiscard]] std::string textOf(const Mark& mark);

} // namespace strandbench::test
