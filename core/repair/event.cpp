// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/event.h"

#include "repair/stock_book.h"

#include <array>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// In the order of the alternatives of Payload. The codes are stored: never change one.
constexpr std::array<const char*, 42> kinds{
    "taken_in",       "answered",        "plan_accepted", "step_done",        "reading_taken", "hardener_in",
    "edges_clear",    "gelled",          "sands",         "sanded",           "turned",        "parked",
    "assess_again",   "taken_up_again",  "handed_over",   "photo_taken",      "noted",         "predicted_again",
    "pat_mixed",      "pat_gelled",      "lot_forgotten", "alarm_answered",   "overridden",    "signed_off",
    "corrected",      "clock_jumped",    "act_refused",   "pin_set",          "log_restored",  "log_merged",
    "stock_received", "stock_opened",    "stock_counted", "stock_adjusted",   "stock_ended",   "stock_moved",
    "stock_probed",   "bead_calibrated", "sheet_kept",    "sheet_laid_aside", "returned",      "rework_begun",
};
static_assert(kinds.size() == std::variant_size_v<Payload>);

} // namespace

QString kindOf(const Payload& payload) { return QString::fromLatin1(kinds[payload.index()]); }

int kindVersionOf(const Payload& payload)
{
    // 2 since lifts, finish and batches hold their cure case; 3 since each lift names its own sheet, and a batch
    // the lot of its hardener; 4 since a batch says how sure its times are.
    if (std::holds_alternative<PlanAccepted>(payload))
        return 4; // since its assessment holds the stops that were overridden
    if (std::holds_alternative<HardenerIn>(payload))
        return 5; // since it says what weighed its masses, and names its sheet's version
    if (std::holds_alternative<Answered>(payload))
        return 3; // since it says what told the substrate
    // 2 since they say what gave their figures, what it waits for, what it is the rework of, or which version its
    // sheet is of. Every other kind
    // is in its first layout.
    const bool second = std::holds_alternative<TakenIn>(payload) || std::holds_alternative<ReadingTaken>(payload) ||
                        std::holds_alternative<PatMixed>(payload) || std::holds_alternative<Parked>(payload);
    return second ? 2 : 1;
}

Subject subjectOf(const Payload& payload)
{
    if (std::holds_alternative<PatMixed>(payload) || std::holds_alternative<PatGelled>(payload) ||
        std::holds_alternative<LotForgotten>(payload))
        return Subject::Lot;
    if (stockLotOf(payload))
        return Subject::Stock;
    const bool ofTheBench =
        std::holds_alternative<ClockJumped>(payload) || std::holds_alternative<ActRefused>(payload) ||
        std::holds_alternative<PinSet>(payload) || std::holds_alternative<LogRestored>(payload) ||
        std::holds_alternative<LogMerged>(payload) || std::holds_alternative<BeadCalibrated>(payload) ||
        std::holds_alternative<SheetKept>(payload) || std::holds_alternative<SheetLaidAside>(payload);
    return ofTheBench ? Subject::Bench : Subject::Repair;
}

QUuid benchSubject()
{
    static const QUuid subject = QUuid::createUuidV5(QUuid(), u"strandbench bench"_s);
    return subject;
}

std::optional<SupervisorAct> supervisorActOf(const Payload& payload)
{
    if (std::holds_alternative<Overridden>(payload))
        return SupervisorAct::Override;
    if (std::holds_alternative<SignedOff>(payload))
        return SupervisorAct::SignOff;
    if (std::holds_alternative<Returned>(payload))
        return SupervisorAct::Return;
    if (std::holds_alternative<Corrected>(payload))
        return SupervisorAct::Correct;
    if (std::holds_alternative<LotForgotten>(payload))
        return SupervisorAct::Forget;
    if (std::holds_alternative<LogRestored>(payload))
        return SupervisorAct::Restore;
    if (std::holds_alternative<SheetKept>(payload) || std::holds_alternative<SheetLaidAside>(payload))
        return SupervisorAct::Sheets;
    return std::holds_alternative<PinSet>(payload) ? std::optional(SupervisorAct::ChangePin) : std::nullopt;
}

std::optional<QByteArray> bytesNamedBy(const Payload& payload)
{
    if (const auto* photo = std::get_if<PhotoTaken>(&payload))
        return photo->hash;
    if (const auto* kept = std::get_if<SheetKept>(&payload))
        return kept->hash;
    return std::nullopt;
}

const std::vector<QString>& overrideReasons()
{
    static const std::vector<QString> all{u"proved_otherwise"_s, u"maker_allows"_s, u"trial_piece"_s};
    return all;
}

const std::vector<QString>& returnReasons()
{
    static const std::vector<QString> all{u"contour"_s,       u"pinholes"_s, u"edge_shows"_s,   u"soft"_s,
                                          u"sounds_hollow"_s, u"strayed"_s,  u"record_lacks"_s, u"other"_s};
    return all;
}

bool isAgainstTheClock(const Payload& payload)
{
    return std::holds_alternative<HardenerIn>(payload) || std::holds_alternative<EdgesClear>(payload) ||
           std::holds_alternative<Gelled>(payload) || std::holds_alternative<Sands>(payload) ||
           std::holds_alternative<PredictedAgain>(payload) || std::holds_alternative<PatMixed>(payload) ||
           std::holds_alternative<PatGelled>(payload) || std::holds_alternative<AlarmAnswered>(payload) ||
           std::holds_alternative<ClockJumped>(payload);
}

} // namespace strandbench
