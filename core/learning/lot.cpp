// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/lot.h"

#include <algorithm>
#include <cmath>

namespace strandbench {
namespace {

class Learner {
public:
    Learner(const Belief& prior, const std::vector<BatchTold>& batches, const LearningRules& rules)
        : m_prior(prior), m_batches(batches), m_rules(rules), m_rate(prior)
    {}

    LotLearnt all()
    {
        for (std::size_t i = 0; i < m_batches.size(); ++i) {
            take(i);
            if (heldInARow() >= m_rules.reopenAfter)
                reopen();
            admitWhatIsMet();
        }
        const auto counted = std::ranges::count_if(m_lessons, isIn);
        return {m_rate, m_lessons, static_cast<int>(counted), m_different};
    }

private:
    static bool isIn(BatchLesson lesson) { return lesson == BatchLesson::Counted || lesson == BatchLesson::Bound; }

    /// How many spreads a rate is off what is expected of the next batch.
    [[nodiscard]] double off(LogRate rate) const
    {
        return (rate.value() - m_rate.mean.value()) / ofTheNext(m_rate, m_rules.batch).spread;
    }

    void take(std::size_t i)
    {
        const BatchTold& told = m_batches[i];
        BatchLesson lesson = BatchLesson::Silent;
        if (const auto gel = told.gel())
            lesson = std::abs(off(*gel)) <= m_rules.gate ? BatchLesson::Counted : BatchLesson::Held;
        else if (told.sandsBy)
            lesson = off(*told.sandsBy) <= m_rules.gate ? BatchLesson::Bound : BatchLesson::Held;
        m_lessons.push_back(lesson);
        learnAnew();
    }

    /// The belief from the prior and all that is in it; the order of gels does not matter.
    void learnAnew()
    {
        m_rate = m_prior;
        for (std::size_t i = 0; i < m_lessons.size(); ++i)
            if (m_lessons[i] == BatchLesson::Counted)
                m_rate = afterSeeing(m_rate, *m_batches[i].gel(), m_rules.batch);
        for (std::size_t i = 0; i < m_lessons.size(); ++i)
            if (m_lessons[i] == BatchLesson::Bound)
                m_rate = afterSeeingAtLeast(m_rate, *m_batches[i].sandsBy, m_rules.batch);
    }

    /// How many gels, counted back from the newest, were held on one side.
    [[nodiscard]] int heldInARow() const
    {
        int found = 0;
        bool fast = false;
        for (std::size_t i = m_lessons.size(); i-- > 0;) {
            const auto gel = m_batches[i].gel();
            if (!gel)
                continue;
            const bool faster = *gel > m_rate.mean;
            if (m_lessons[i] != BatchLesson::Held || (found > 0 && faster != fast))
                break;
            fast = faster;
            ++found;
        }
        return found;
    }

    /// The lot is different: it begins with those that were held, and what came before says nothing of it.
    void reopen()
    {
        int left = heldInARow();
        m_different = true;
        m_prior.spread = std::max(m_prior.spread, m_rules.reopened);
        for (std::size_t i = m_lessons.size(); i-- > 0;) {
            if (m_batches[i].gel() && left > 0) {
                m_lessons[i] = BatchLesson::Counted;
                --left;
            } else if (isIn(m_lessons[i])) {
                m_lessons[i] = BatchLesson::Before;
            }
        }
        learnAnew();
    }

    /// A batch that was held is counted once the belief has come so near that it would not be held now.
    void admitWhatIsMet()
    {
        for (std::size_t i = 0; i < m_lessons.size(); ++i) {
            const auto gel = m_batches[i].gel();
            if (m_lessons[i] != BatchLesson::Held || !gel || std::abs(off(*gel)) > m_rules.gate)
                continue;
            m_lessons[i] = BatchLesson::Counted;
            learnAnew();
        }
    }

    Belief m_prior;
    const std::vector<BatchTold>& m_batches;
    const LearningRules& m_rules;
    Belief m_rate;
    std::vector<BatchLesson> m_lessons;
    bool m_different = false;
};

} // namespace

std::optional<LogRate> BatchTold::gel() const
{
    if (board && panel)
        return LogRate::ofLogarithm((board->value() + panel->value()) / 2.0);
    return board ? board : panel;
}

LotLearnt learnLot(const Belief& prior, const std::vector<BatchTold>& batches, const LearningRules& rules)
{
    return Learner(prior, batches, rules).all();
}

} // namespace strandbench
