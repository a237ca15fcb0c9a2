// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/closing.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Outcome = std::optional<Fault>;

class Closer {
public:
    Closer(Repair& repair, const Event& event) : m_repair(repair), m_event(event) {}

    Outcome operator()(const SignedOff& signedOff)
    {
        if (m_repair.signedOff || m_repair.returned)
            return conflict({}, u"next_step"_s, codeOf(nextStep(m_repair).station));
        m_repair.signedOff = {signedOff, m_event.at, m_event.person};
        return {};
    }

    Outcome operator()(const Returned& returned)
    {
        if (m_repair.signedOff || m_repair.returned)
            return conflict({}, u"next_step"_s, codeOf(nextStep(m_repair).station));
        if (returned.reason.trimmed().isEmpty())
            return Fault{u"returned.reason"_s, returned.reason, FaultKind::Empty, {}};
        m_repair.returned = {returned, m_event.at, m_event.person};
        return {};
    }

    Outcome operator()(const ReworkBegun& begun)
    {
        if (!m_repair.waitsForRework())
            return conflict({}, u"next_step"_s, codeOf(nextStep(m_repair).station));
        if (begun.rework.isNull() || begun.rework == m_repair.id)
            return conflict(begun.rework.toString(QUuid::WithoutBraces), u"repair"_s,
                            m_repair.id.toString(QUuid::WithoutBraces));
        m_repair.rework = begun.rework;
        return {};
    }

    Outcome operator()(const Corrected& correction)
    {
        if (correction.seq < 1 || correction.seq > m_repair.lastSeq)
            return conflict(QString::number(correction.seq), u"last_seq"_s, QString::number(m_repair.lastSeq));
        if (correction.text.trimmed().isEmpty())
            return Fault{u"corrected.text"_s, correction.text, FaultKind::Empty, {}};
        m_repair.corrections.push_back({correction, m_event.at, m_event.person});
        return {};
    }

    template <class Other> Outcome operator()(const Other&)
    {
        return conflict({}, u"next_step"_s, described(nextStep(m_repair)));
    }

    [[nodiscard]] Fault conflict(const QString& value, const QString& field, const QString& held) const
    {
        return {kindOf(m_event.payload), value, FaultKind::Conflicts, {field, held}};
    }

private:
    Repair& m_repair;
    const Event& m_event;
};

} // namespace

bool isClosing(const Payload& payload)
{
    return std::holds_alternative<SignedOff>(payload) || std::holds_alternative<Returned>(payload) ||
           std::holds_alternative<ReworkBegun>(payload) || std::holds_alternative<Corrected>(payload);
}

std::optional<Fault> putClosing(Repair& repair, const Event& event)
{
    Closer closer(repair, event);
    if (repair.handedOverAt)
        return std::visit(closer, event.payload);
    const auto* correction = std::get_if<Corrected>(&event.payload);
    return closer.conflict(correction ? QString::number(correction->seq) : QString(), u"next_step"_s,
                           described(nextStep(repair)));
}

} // namespace strandbench
