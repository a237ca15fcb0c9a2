// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice_thumb.h"

#include "practice/panel_json.h"

#include <algorithm>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int mostTaps = 400;

struct AnswerCode {
    template <class E> QString operator()(E value) const { return codeOf(value); }
    QString operator()(bool yes) const { return yes ? u"yes"_s : u"no"_s; }
};

template <class E> QString codeOr(const std::optional<E>& value) { return value ? AnswerCode()(*value) : QString(); }

QString codeOfAnswer(Question question, const Assessment& found)
{
    switch (question) {
    case Question::Substrate:
        return codeOr(found.substrate);
    case Question::DamageKind:
        return codeOf(found.damage->kind);
    case Question::Weld:
        return codeOr(found.damage->weld);
    case Question::AdhesiveCured:
        return codeOr(found.damage->adhesiveCured);
    case Question::RearAccess:
        return codeOr(std::optional(found.rearAccess.value_or(false)));
    case Question::Surface:
        return codeOr(found.surface);
    case Question::Zone:
        return codeOr(found.zone);
    case Question::Moisture:
        return codeOr(found.moisture);
    case Question::Core:
        return codeOf(found.core);
    case Question::Size:
    case Question::Reading:
        break;
    }
    Q_UNREACHABLE();
}

} // namespace

PracticePanel carried(const QString& id)
{
    const auto panel = std::ranges::find(builtInPanels(), id, &PracticePanel::id);
    if (panel == builtInPanels().end())
        throw std::logic_error("no panel " + id.toStdString());
    return *panel;
}

QString PracticeThumb::tap(const QString& control)
{
    return m_bench.thumb().tap(control) ? QString() : control + u" on "_s + screen();
}

QString PracticeThumb::pick(const QString& control, const QString& more)
{
    for (int page = 0; page < 9; ++page) {
        if (m_bench.thumb().find(control))
            return tap(control);
        if (const QString failed = tap(more); !failed.isEmpty())
            return control + u": "_s + failed;
        m_bench.thumb().settle();
    }
    return control + u" on no page of "_s + screen();
}

QString PracticeThumb::pickAll(const std::vector<QString>& codes)
{
    for (const QString& each : codes)
        if (const QString failed = pick(u"pick_"_s + each, u"more"_s); !failed.isEmpty())
            return failed;
    return tap(u"answer_way_on"_s);
}

/// As it is keyed in on this bench: lengths to a thousandth of an inch in US customary units.
QString PracticeThumb::keyed(const QString& name, double value) const
{
    if (m_bench.window().settings().units == UnitSystem::UsCustomary && name.endsWith(u"_mm"_s))
        return QString::number(inInches(millimetres(value)), 'f', 3);
    return QString::number(value, 'g', 6);
}

QString PracticeThumb::keyIn(const std::vector<std::pair<QString, double>>& figures)
{
    for (const auto& [name, value] : figures) {
        if (const QString failed = tap(name + u"_figure"_s); !failed.isEmpty())
            return failed;
        for (const QString text = keyed(name, value); const QChar each : text)
            if (const QString failed = tap(each == u'.' ? u"key_point"_s : u"key_"_s + each); !failed.isEmpty())
                return failed;
        if (const QString failed = tap(u"answer_way_on"_s); !failed.isEmpty())
            return failed;
    }
    return tap(u"answer_way_on"_s);
}

QString PracticeThumb::answer(Question question, const Attempt& attempt)
{
    if (question != Question::Size)
        return pick(u"answer_"_s + codeOfAnswer(question, attempt.found), u"more_answers"_s);
    const Damage& damage = *attempt.found.damage;
    std::vector<std::pair<QString, double>> figures;
    const auto add = [&](const QString& name, double value) {
        if (m_bench.window().findChild<QWidget*>(name + u"_figure"_s))
            figures.emplace_back(name, value);
    };
    const auto rounded = [](Length length) { return qRound(inMillimetres(length) * 10) / 10.0; };
    add(u"length_mm"_s, rounded(damage.length));
    add(u"width_mm"_s, rounded(damage.width));
    add(u"depth_mm"_s, rounded(damage.depth));
    add(u"panel_thickness_mm"_s, rounded(damage.panelThickness));
    add(u"bevel_ratio"_s, damage.bevelRatio);
    return keyIn(figures);
}

QString PracticeThumb::mix(const MixedBatch& batch)
{
    const auto reach = [this](const QString& what, double from, double to, double step) {
        const QString key = what + (to > from ? u"_more"_s : u"_less"_s);
        for (int i = qRound(std::abs(to - from) / step); i > 0; --i)
            if (const QString failed = tap(key); !failed.isEmpty())
                return failed;
        return QString();
    };
    if (const QString failed = reach(u"puddle"_s, 40, inMillimetres(batch.puddle), 1); !failed.isEmpty())
        return failed;
    if (const QString failed = reach(u"bead"_s, 20, inMillimetres(batch.bead), 0.5); !failed.isEmpty())
        return failed;
    return tap(u"answer_way_on"_s);
}

QString PracticeThumb::after(Duration since)
{
    m_bench.clock().advance(since);
    m_bench.window().tick();
    return tap(u"answer_way_on"_s);
}

bool PracticeThumb::saysWhatIsAsked(const Attempt& attempt) const
{
    const std::size_t laid = run().attempt().lifts.size();
    const AttemptedLift* lift = laid > 0 && laid <= attempt.lifts.size() ? &attempt.lifts[laid - 1] : nullptr;
    const std::size_t batches = laid > 0 ? run().attempt().lifts.back().batches.size() : 0;
    switch (run().asks()) {
    case PracticeAsks::FillOrStop:
        return attempt.fill.has_value();
    case PracticeAsks::Filler:
        return attempt.filler.has_value();
    case PracticeAsks::Lift:
        return laid < attempt.lifts.size();
    case PracticeAsks::Mix:
        return lift && batches < lift->batches.size();
    case PracticeAsks::Spread:
        return lift && batches > 0 && batches <= lift->batches.size() && lift->batches[batches - 1].edgesCleared;
    case PracticeAsks::Sand:
        return lift && (batches < lift->batches.size() || (lift->sanded && lift->batches.back().edgesCleared));
    case PracticeAsks::Coats:
    case PracticeAsks::Tests:
    case PracticeAsks::Primer:
        return attempt.finish.has_value();
    default:
        return true;
    }
}

QString PracticeThumb::step(const Attempt& attempt)
{
    if (screen() == u"screen_panel_look"_s)
        return tap(u"answer_way_on"_s);
    if (!saysWhatIsAsked(attempt))
        return u"the attempt does not say what is asked on "_s + screen();
    const auto& laid = run().attempt().lifts;
    const AttemptedLift* wanted =
        !laid.empty() && laid.size() <= attempt.lifts.size() ? &attempt.lifts[laid.size() - 1] : nullptr;
    switch (run().asks()) {
    case PracticeAsks::Question:
        return answer(*run().question(), attempt);
    case PracticeAsks::FillOrStop:
        return tap(*attempt.fill ? u"fill_it"_s : u"stop_here"_s);
    case PracticeAsks::WhyStop:
        return pickAll(attempt.stops);
    case PracticeAsks::Instead:
        return pick(u"instead_"_s + attempt.instead, u"more_answers"_s);
    case PracticeAsks::Filler:
        return pick(u"filler_"_s + codeOf(*attempt.filler), u"more_answers"_s);
    case PracticeAsks::Steps:
        return pickAll(attempt.steps);
    case PracticeAsks::Lift:
        return keyIn({{u"lift_mm"_s, qRound(inMillimetres(attempt.lifts[laid.size()].thickness) * 10) / 10.0}});
    case PracticeAsks::Mix:
        return mix(wanted->batches.at(laid.back().batches.size()));
    case PracticeAsks::Spread:
        return after(*wanted->batches.at(laid.back().batches.size() - 1).edgesCleared);
    case PracticeAsks::Sand:
        if (laid.back().batches.size() < wanted->batches.size())
            return tap(u"another_batch"_s);
        return after(*wanted->sanded - *wanted->batches.back().edgesCleared);
    case PracticeAsks::AfterSanding:
        if (laid.size() == attempt.lifts.size())
            return tap(u"to_finish"_s);
        return tap(attempt.lifts[laid.size()].face == run().face() ? u"next_lift"_s : u"turn_it"_s);
    case PracticeAsks::Coats:
        return keyIn({{u"coats"_s, attempt.finish->coats},
                      {u"coat_mm"_s, qRound(inMillimetres(attempt.finish->coat) * 10) / 10.0}});
    case PracticeAsks::Tests: {
        std::vector<QString> codes;
        for (const InspectionTest each : attempt.finish->tests)
            codes.push_back(codeOf(each));
        return pickAll(codes);
    }
    case PracticeAsks::Primer:
        return keyIn({{u"wait_min"_s, std::ceil(inMinutes(attempt.finish->beforePrimer))}});
    case PracticeAsks::Done:
        break;
    }
    return u"nothing is asked on "_s + screen();
}

QString PracticeThumb::work(const Attempt& attempt)
{
    for (int taps = 0; taps < mostTaps; ++taps) {
        if (screen() == u"screen_practice_marks"_s)
            return {};
        if (const QString failed = step(attempt); !failed.isEmpty())
            return failed;
    }
    return u"no end"_s;
}

} // namespace strandbench::test
