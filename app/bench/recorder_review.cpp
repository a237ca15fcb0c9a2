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
    std::function<Logged<FindIndex::Digests>(const FindIndex&)> answer;  ///< nothing: some are lacking
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
        auto answer = review->answer(*m_index);
        if (!answer)
            return end(tl::unexpected(answer.error()));
        if (*answer)
            return end(**std::move(answer));
        auto lacking = review->lacking(*m_index);
        if (!lacking)
            return end(tl::unexpected(lacking.error()));
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
    auto review = std::make_shared<Reviewing>(Reviewing{
        ask,
        [fromDay, toDay, mark = ask.mark](const FindIndex& index) {
            return index.undigested(fromDay, toDay, mark, allOfThem);
        },
        [fromDay, toDay, mark = ask.mark](const FindIndex& index) { return index.digests(fromDay, toDay, mark); },
        std::move(then)});
    QMetaObject::invokeMethod(
        m_writer, [this, review] { goOnReviewing(review); }, Qt::QueuedConnection);
}

void Recorder::reviewLot(const StockLot& lot, const ReviewAsk& ask, std::function<void(const Logged<Digests>&)> then)
{
    auto review = std::make_shared<Reviewing>(Reviewing{
        ask, [lot, mark = ask.mark](const FindIndex& index) { return index.undigested(lot, mark, allOfThem); },
        [lot, mark = ask.mark](const FindIndex& index) { return index.digests(lot, mark); }, std::move(then)});
    QMetaObject::invokeMethod(
        m_writer, [this, review] { goOnReviewing(review); }, Qt::QueuedConnection);
}

struct Recorder::Sheets {
    std::function<void(const Logged<DaySheets>&)> then;
    std::vector<QUuid> repairs;
    DaySheets read = {};
};

void Recorder::goOnReading(const std::shared_ptr<Sheets>& sheets)
{
    const auto end = [this, sheets](const Logged<DaySheets>& found) {
        QMetaObject::invokeMethod(
            this, [sheets, found] { sheets->then(found); }, Qt::QueuedConnection);
    };
    if (!m_log)
        return end(tl::unexpected(LogFailure{LogTrouble::CannotOpen, m_path}));
    const std::size_t next = sheets->read.repairs.size();
    if (next == sheets->repairs.size())
        return end(sheets->read);
    auto file = fileOf(sheets->repairs[next]);
    if (!file)
        return end(tl::unexpected(file.error()));
    sheets->read.head = file->head;
    sheets->read.repairs.push_back(*std::move(file));
    QMetaObject::invokeMethod(
        m_writer, [this, sheets] { goOnReading(sheets); }, Qt::QueuedConnection);
}

void Recorder::readSheets(const QString& localDay, std::function<void(const Logged<DaySheets>&)> then)
{
    const auto sheets = std::make_shared<Sheets>(Sheets{std::move(then), {}});
    const auto begin = [this, localDay, sheets] {
        const auto repairs =
            m_log ? m_log->repairsOfDay(localDay)
                  : Logged<std::vector<RepairSummary>>(tl::unexpected(LogFailure{LogTrouble::CannotOpen, m_path}));
        const auto head = repairs ? m_log->head() : Logged<ChainHead>(tl::unexpected(repairs.error()));
        if (!head) {
            QMetaObject::invokeMethod(
                this, [sheets, failure = head.error()] { sheets->then(tl::unexpected(failure)); },
                Qt::QueuedConnection);
            return;
        }
        sheets->read.head = *head;
        for (const RepairSummary& each : *repairs)
            sheets->repairs.push_back(each.repair);
        goOnReading(sheets);
    };
    QMetaObject::invokeMethod(m_writer, begin, Qt::QueuedConnection);
}

Logged<RepairFile> Recorder::fileOf(const QUuid& repair) const
{
    auto events = m_log->events(repair);
    const auto head = m_log->head();
    if (!events || !head)
        return tl::unexpected(!events ? events.error() : head.error());
    RepairFile file{std::move(*events), {}, *head};
    for (const Event& each : file.events) {
        const auto* photo = std::get_if<PhotoTaken>(&each.payload);
        if (!photo)
            continue;
        auto bytes = m_log->blob(photo->hash);
        if (bytes)
            file.pictures[photo->hash] = std::move(*bytes);
        else if (bytes.error().trouble != LogTrouble::DoesNotFollow) // lost when the log was rescued: shown as missing
            return tl::unexpected(bytes.error());
    }
    return file;
}

} // namespace strandbench
