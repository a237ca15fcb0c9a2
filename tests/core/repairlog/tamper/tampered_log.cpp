// SPDX-License-Identifier: GPL-3.0-or-later
#include "tampered_log.h"

#include "repair/lot_book.h"

#include <algorithm>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

std::vector<EventDraft> everyAct(std::size_t ofRepair)
{
    auto acts = wholeRepair(390);
    acts.resize(std::min(acts.size(), ofRepair));
    acts.push_back(oneMore());
    const PatMixed pat{u"demo_mixed"_s, u"H7"_s,    u"L1"_s,    grams(29),  grams(0.58),
                       celsius(20),     minutes(5), minutes(5), minutes(4), minutes(6)};
    const QUuid lot = lotSubject({pat.sheetId, pat.hardenerLot});
    acts.push_back({lot, u"Zoë"_s, pat, moment(91000), {}});
    acts.push_back({lot, u"Zoë"_s, PatGelled{pat.sheetId, pat.hardenerLot}, moment(91300), {}});
    acts.push_back({benchSubject(), u"Zoë"_s, ActRefused{}, moment(91400), {}});
    acts.push_back({benchSubject(), u"Zoë"_s, PinSet{}, moment(91500), {}});
    return acts;
}

} // namespace

TamperedLog::TamperedLog(std::size_t actsOfRepair)
{
    for (const EventDraft& act : everyAct(actsOfRepair)) {
        auto log = RepairLog::open(place(), LogMode::ReadWrite).value();
        const auto event = log->append(act);
        if (!event)
            throw std::runtime_error("append: " + event.error().detail.toStdString());
        head = log->head().value();
        log.reset(); // from here on all is in the one file
        summariesAfter.push_back(Hand(place(), true).rows("SELECT * FROM summary"));
    }
}

void TamperedLog::expectFound(const std::string& what)
{
    const auto report = verifyLog(place());
    const bool named = report && !report->clean && !report->breaksAt.isEmpty();
    ++(named ? found : missed);
    if (!named && missed <= 20)
        ADD_FAILURE() << "not found: " << what << (report ? "" : qPrintable(u": "_s + report.error().detail));
}

void TamperedLog::expectClean(const std::string& what)
{
    const auto report = verifyLog(place());
    ASSERT_TRUE(report) << what << ": " << qPrintable(report.error().detail);
    ASSERT_TRUE(report->clean) << what << ": " << qPrintable(report->breaksAt + u' ' + report->where);
}

} // namespace strandbench::test
