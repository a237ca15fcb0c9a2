// SPDX-License-Identifier: GPL-3.0-or-later
// What happened, in words: one sentence an event, and an answer as it is read.
#pragma once

#include "review/job_record.h"
#include "words/words.h"

namespace strandbench {

struct EventLine {
    Instant at;
    qint64 seq = 0;
    QString person; ///< empty: not told
    QString text;
};

/// The events of a record in the order of time.
[[nodiscard]] std::vector<EventLine> eventLines(const JobRecord& record, const Words& words);

/// "60 × 40 mm, 3.5 mm deep", "Laminate", "air 18.5 °C, panel 17 °C, humidity 52 %".
[[nodiscard]] QString answerText(Question question, const AnswerValue& value, const Words& words);

/// "Batch 2", "Finishing batch 1".
[[nodiscard]] QString batchName(BatchRef batch);

/// "R. Quist", or that nobody was told.
[[nodiscard]] QString personText(const QString& person);

} // namespace strandbench
