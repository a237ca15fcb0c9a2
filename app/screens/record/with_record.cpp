// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/with_record.h"

#include <QPointer>

namespace strandbench {

void withRecord(const Surroundings& around, Screen* screen, const QUuid& repair,
                const std::function<void(const JobRecord&, const RepairFile&)>& show)
{
    around.bench.recorder().readRepair(repair,
                                       [&bench = around.bench, &words = around.words, there = QPointer<Screen>(screen),
                                        show](const Logged<RepairFile>& file) {
                                           if (!there) // and only as long as it is, its surroundings are
                                               return;
                                           if (!file)
                                               return there->showTrouble(file.error());
                                           const auto record = recordOf(file->events, bench.planning().catalogue);
                                           if (!record)
                                               return there->showTrouble(words.fault(record.error().front()), {});
                                           show(*record, *file);
                                       });
}

} // namespace strandbench
