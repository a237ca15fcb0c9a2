// SPDX-License-Identifier: GPL-3.0-or-later
// Reviews of many repairs: digested in slices in the writer's thread, so that an act never waits for them.
#include "bench/recorder.h"

#include <algorithm>

namespace strandbench {
namespace {

constexpr int digestsAtOnce = 50; ///< before an act is written again: some tens of milliseconds
constexpr int allOfThem = 10'000'000;

} // namespace

struct Recorder::Reviewing {
    ReviewAsk ask;
    std::function<Logged<std::vector<QUuid>>(const FindIndex&)> lacking; ///< a digest
    std::function<Logged<Digests>(const FindIndex&)> answer;
    std::function<void(const Logged<Digests>&)> then;
    std::vector<QUuid> left = {};
    int of = 0; ///< that were left at first
    bool asked = false;
};

Logged<void> Recorder::digestSome(Reviewing& review)
{
    Digests made;
    for (int i = 0; i < digestsAtOnce && !review.left.empty(); ++i) {
        const auto events = m_log->events(review.left.back());
        if (!events)
            return tl::unexpected(events.error());
        review.left.pop_back();
        if (events->empty()) // found by the index, and not in the log: no answer would ever be whole
            return tl::unexpected(LogFailure{LogTrouble::DoesNotFollow, m_path});
        made.push_back(review.ask.digest(*events));
    }
    return m_index->keep(made, review.ask.mark);
}

void Recorder::goOnReviewing(const std::shared_ptr<Reviewing>& review)
{
    if (*review->ask.cancelled)
        return;
    const auto end = [this, review](const Logged<Digests>& found) {
        QMetaObject::invokeMethod(
            this,
            [review, found] {
                if (!*review->ask.cancelled)
                    review->then(found);
            },
            Qt::QueuedConnection);
    };
    auto whole = catchUpIndex();
    if (!whole)
        return end(tl::unexpected(whole.error()));
    if (*whole && review->left.empty()) {
        auto lacking = review->lacking(*m_index);
        if (!lacking)
            return end(tl::unexpected(lacking.error()));
        if (lacking->empty())
            return end(review->answer(*m_index));
        review->left = *std::move(lacking);
        if (!std::exchange(review->asked, true))
            review->of = static_cast<int>(review->left.size());
    }
    if (*whole)
        if (const auto done = digestSome(*review); !done)
            return end(tl::unexpected(done.error()));
    if (review->ask.progress && review->asked)
        QMetaObject::invokeMethod(
            this,
            [review, left = static_cast<int>(review->left.size())] {
                if (!*review->ask.cancelled)
                    review->ask.progress(std::max(0, review->of - left), review->of);
            },
            Qt::QueuedConnection);
    QMetaObject::invokeMethod(
        m_writer, [this, review] { goOnReviewing(review); }, Qt::QueuedConnection); // behind what is to be written
}

void Recorder::review(const QString& fromDay, const QString& toDay, const ReviewAsk& ask,
                      std::function<void(const Logged<Digests>&)> then)
{
    auto review = std::make_shared<Reviewing>(
        Reviewing{ask,
                  [fromDay, toDay, mark = ask.mark](const FindIndex& index) {
                      return index.undigested(fromDay, toDay, mark, allOfThem);
                  },
                  [fromDay, toDay](const FindIndex& index) { return index.digests(fromDay, toDay); }, std::move(then)});
    QMetaObject::invokeMethod(
        m_writer, [this, review] { goOnReviewing(review); }, Qt::QueuedConnection);
}

void Recorder::reviewLot(const StockLot& lot, const ReviewAsk& ask, std::function<void(const Logged<Digests>&)> then)
{
    auto review = std::make_shared<Reviewing>(Reviewing{
        ask, [lot, mark = ask.mark](const FindIndex& index) { return index.undigested(lot, mark, allOfThem); },
        [lot](const FindIndex& index) { return index.digests(lot); }, std::move(then)});
    QMetaObject::invokeMethod(
        m_writer, [this, review] { goOnReviewing(review); }, Qt::QueuedConnection);
}

} // namespace strandbench
