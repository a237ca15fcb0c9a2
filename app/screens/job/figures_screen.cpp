// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/figures_screen.h"

#include "screens/job/caution_list.h"
#include "screens/set_up/instrument_words.h"
#include "theme/sizes.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QLocale>
#include <QStackedLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {

FiguresScreen::FiguresScreen(const Surroundings& around, Spec spec, QWidget* parent)
    : Screen(around, spec.name, parent), m_spec(std::move(spec)), m_worker(around.bench.computing())
{
    m_atFirst = values();
    buildFrame(m_spec.context, m_spec.sentence);
    if (!m_spec.ofARepair)
        answers()->stop()->hide();
    auto* holder = new QWidget(this);
    content()->addWidget(holder, 1);
    m_pages = new QStackedLayout(holder);
    auto* steppers = new QWidget(holder);
    auto* keys = new QWidget(holder);
    m_pages->addWidget(steppers);
    m_pages->addWidget(keys);
    buildSteppers(steppers);
    buildKeyPad(keys);
    disconnect(answers(), &AnswerBar::backTapped, this, &Screen::backTapped);
    connect(answers(), &AnswerBar::backTapped, this, &FiguresScreen::back);
    connect(answers(), &AnswerBar::wayOnTapped, this, &FiguresScreen::wayOn);
    refresh();
}

void FiguresScreen::buildSteppers(QWidget* page)
{
    auto* grid = new QGridLayout(page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const int columns = around().upright ? 1 : 2;
    for (std::size_t i = 0; i < m_spec.figures.size(); ++i) {
        const FigureSpec& figure = m_spec.figures[i];
        auto* stepper = new Stepper(theme(), figure.name, figure.caption, page);
        connect(stepper, &Stepper::stepped, this, [this, i](int direction) { step(i, direction); });
        connect(stepper, &Stepper::figureTapped, this, [this, i] { openKeyPad(i); });
        connect(stepper, &Stepper::unitTapped, this, [this] { m_spec.changeUnits(); });
        const int at = static_cast<int>(i);
        grid->addWidget(stepper, at / columns, at % columns);
        grid->setColumnStretch(at % columns, 1);
        grid->setRowStretch(at / columns, 1);
        m_steppers.push_back(stepper);
    }
    if (!m_spec.verdict && m_spec.cautions.empty() && m_spec.takeOvers.empty())
        return;
    const int next = static_cast<int>(m_spec.figures.size());
    auto* cell = new QHBoxLayout;
    cell->setSpacing(px(sizes::gap));
    auto* beside = new QVBoxLayout;
    cell->addLayout(beside, 3);
    if (m_spec.verdict) {
        m_verdict = label(u"verdict"_s, TextRole::Body, {}, Role::Ink, true);
        beside->addWidget(m_verdict, 1);
    }
    if (m_spec.outlook) {
        m_outlook = label(u"outlook"_s, TextRole::Body);
        beside->addWidget(m_outlook, 1);
    }
    if (!m_spec.cautions.empty())
        beside->addWidget(m_spec.cautions.size() > 1 ? cautionStrip(m_spec.cautions, theme(), page, 2)
                                                     : cautionList(m_spec.cautions, theme(), page)); // room for one
    grid->addLayout(cell, next / columns, next % columns);
    if (m_spec.takeOvers.empty())
        return;
    // An even number of figures leaves a cell of its own for the keys.
    if (next % 2 == 0)
        grid->addWidget(takeOverKeys(), (next + 1) / columns, (next + 1) % columns);
    else
        cell->addWidget(takeOverKeys(), 2);
}

QWidget* FiguresScreen::takeOverKeys()
{
    auto* box = new QWidget(this);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(px(sizes::gap));
    for (const Spec::TakeOver& each : m_spec.takeOvers) {
        auto* key = new TapButton(theme(), each.name, TapButton::Kind::Plain, box);
        key->setTitleSize({5, 3.6});
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        connect(key, &TapButton::clicked, this, [this, each] { takeOver(each); });
        connect(each.feed, &InstrumentFeed::changed, this, &FiguresScreen::showTakeOvers);
        row->addWidget(key, 1);
        m_takeOverKeys.push_back(key);
    }
    showTakeOvers();
    return box;
}

std::vector<std::pair<std::size_t, double>> FiguresScreen::offered(const Spec::TakeOver& from) const
{
    const auto steady = from.feed->view().steady;
    if (!steady)
        return {};
    auto figures = from.figures(*steady);
    const bool allowed = std::ranges::all_of(figures, [&](const auto& each) {
        const FigureSpec& figure = m_spec.figures[each.first];
        return each.second >= figure.lowest && each.second <= figure.highest;
    });
    return allowed ? figures : std::vector<std::pair<std::size_t, double>>{};
}

void FiguresScreen::showTakeOvers()
{
    for (std::size_t i = 0; i < m_takeOverKeys.size(); ++i) {
        const Spec::TakeOver& from = m_spec.takeOvers[i];
        const InstrumentView view = from.feed->view();
        TapButton* key = m_takeOverKeys[i];
        const bool offers = !offered(from).empty();
        key->setTitle(view.live ? instruments::reading(*view.live, words()) : from.caption);
        key->setSecondLine(offers        ? tr("%1: take over").arg(from.caption)
                           : view.steady ? tr("not within what is allowed here")
                           : view.live   ? tr("not steady yet")
                                         : instruments::headline(view, from.feed->setting(), words()));
        key->setEnabled(offers && !m_shut);
    }
}

void FiguresScreen::putTaken(std::size_t index, double value)
{
    FigureSpec& figure = m_spec.figures[index];
    if (value < figure.lowest || value > figure.highest)
        return;
    figure.value = value;
    m_taken.insert(index);
    refresh();
}

void FiguresScreen::takeOver(const Spec::TakeOver& from)
{
    const auto figures = offered(from); // as it is now, not as the key was painted
    if (figures.empty())
        return showTakeOvers();
    for (const auto& [index, value] : figures) {
        m_spec.figures[index].value = value;
        m_taken.insert(index);
    }
    showTrouble({}, {});
    refresh();
}

void FiguresScreen::buildKeyPad(QWidget* page)
{
    auto* row = new QBoxLayout(around().upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, page);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(px(sizes::gap));
    m_typed = label(u"typed"_s, TextRole::BigFigure, {}, Role::Ink, true);
    m_typed->setAlignment(Qt::AlignCenter);
    m_keys = new KeyPad(theme(), around().upright ? 4 : 6, page);
    m_keys->setLongest(7);
    m_keys->setPointSign(words().locale().decimalPoint());
    row->addWidget(m_typed, 1);
    row->addWidget(m_keys, 3);
    connect(m_keys, &KeyPad::textChanged, this, &FiguresScreen::showTyped);
}

void FiguresScreen::step(std::size_t index, int direction)
{
    FigureSpec& figure = m_spec.figures[index];
    const double next = figure.value ? *figure.value + direction * figure.step : figure.start;
    figure.value = std::clamp(next, figure.lowest, figure.highest);
    m_taken.erase(index);
    showTrouble({}, {});
    refresh();
}

void FiguresScreen::openKeyPad(std::size_t index)
{
    m_typing = index;
    showTrouble({}, {});
    m_keys->setText({});
    showTyped({});
    setSentence(m_spec.figures[index].keyPadSentence);
    m_pages->setCurrentIndex(1);
    m_keys->setFocus();
    refresh();
}

void FiguresScreen::showTyped(const QString& text)
{
    const FigureSpec& figure = m_spec.figures[*m_typing];
    QString shown = text;
    shown.replace(u'.', words().locale().decimalPoint());
    m_typed->setText((shown.isEmpty() ? u"–"_s : shown) + QChar(0x00a0) + figure.unit());
    answers()->setWayOnEnabled(!text.isEmpty());
}

void FiguresScreen::takeTyped()
{
    FigureSpec& figure = m_spec.figures[*m_typing];
    const Checked<double> read = figure.read(m_keys->text());
    if (!read)
        return showTrouble(words().fault(read.error().front()), {});
    figure.value = *read;
    m_taken.erase(*m_typing);
    closeKeyPad();
}

void FiguresScreen::closeKeyPad()
{
    m_typing.reset();
    showTrouble({}, {});
    setSentence(m_spec.sentence);
    m_pages->setCurrentIndex(0);
    refresh();
}

void FiguresScreen::wayOn()
{
    if (m_typing)
        return takeTyped();
    std::vector<double> all;
    for (const FigureSpec& each : m_spec.figures) {
        if (!each.value)
            return showTrouble(tr("%1 is not measured yet.").arg(each.caption), tr("Tap its figure to key it in."));
        all.push_back(*each.value);
    }
    m_spec.done(all);
}

void FiguresScreen::back()
{
    if (m_typing)
        closeKeyPad();
    else
        Q_EMIT backTapped();
}

std::vector<std::optional<double>> FiguresScreen::values() const
{
    std::vector<std::optional<double>> all;
    for (const FigureSpec& each : m_spec.figures)
        all.push_back(each.value);
    return all;
}

void FiguresScreen::refresh()
{
    for (std::size_t i = 0; i < m_steppers.size(); ++i) {
        const FigureSpec& figure = m_spec.figures[i];
        const Printed shown = figure.value ? figure.print(*figure.value) : Printed{{}, figure.unit()};
        m_steppers[i]->setShown(shown.figure, shown.unit);
    }
    if (m_typing) {
        answers()->setWayOn(tr("Take this figure"));
        return;
    }
    answers()->setWayOn(m_spec.wayOn);
    askOutlook();
    if (!m_spec.verdict)
        return;
    const Spec::Verdict verdict = m_spec.verdict(values());
    m_verdict->setText(verdict.text);
    m_verdict->setRole(verdict.allowed ? Role::Ink : Role::Stop);
    m_allowed = verdict.allowed;
    shutOrOpen();
}

void FiguresScreen::shutOrOpen()
{
    if (!m_typing)
        answers()->setWayOnEnabled(m_allowed && m_outlookAllows);
}

void FiguresScreen::askOutlook()
{
    if (!m_spec.outlook)
        return;
    const std::function<Spec::Verdict()> work = m_spec.outlook(values());
    const auto tell = [this](const Spec::Verdict& verdict) {
        m_outlook->setText(verdict.text);
        m_outlook->setRole(verdict.allowed ? Role::Ink : Role::Stop);
        m_outlookAllows = verdict.allowed;
        shutOrOpen();
    };
    if (!work)
        return tell({});
    m_worker.ask([tell, work] {
        const Spec::Verdict verdict = work();
        return [tell, verdict] { tell(verdict); };
    });
}

QVariantMap FiguresScreen::draft() const
{
    QVariantMap draft;
    for (std::size_t i = 0; i < m_spec.figures.size(); ++i)
        if (const FigureSpec& each = m_spec.figures[i]; each.value && each.value != m_atFirst[i])
            draft[each.name] = *each.value;
    QStringList taken;
    for (const std::size_t each : m_taken)
        taken << m_spec.figures[each].name;
    if (!taken.isEmpty())
        draft[u"by_instrument"_s] = taken;
    if (m_typing && !m_keys->text().isEmpty()) {
        const FigureSpec& figure = m_spec.figures[*m_typing];
        // Digits mean nothing without their unit.
        draft[u"typing"_s] = QStringList{figure.name, m_keys->text(), figure.unit()};
    }
    return draft;
}

void FiguresScreen::setDraft(const QVariantMap& draft)
{
    const QStringList taken = draft.value(u"by_instrument"_s).toStringList();
    for (std::size_t i = 0; i < m_spec.figures.size(); ++i) {
        FigureSpec& each = m_spec.figures[i];
        if (!draft.contains(each.name))
            continue;
        each.value = std::clamp(draft.value(each.name).toDouble(), each.lowest, each.highest);
        if (taken.contains(each.name))
            m_taken.insert(i);
    }
    refresh();
    const QStringList typing = draft.value(u"typing"_s).toStringList();
    for (std::size_t i = 0; i < m_spec.figures.size() && typing.size() == 3; ++i) {
        const FigureSpec& figure = m_spec.figures[i];
        if (figure.name != typing[0] || figure.unit() != typing[2])
            continue;
        openKeyPad(i);
        m_keys->setText(typing[1]);
        showTyped(typing[1]);
    }
}

void FiguresScreen::setWriting(bool writing)
{
    Screen::setWriting(writing);
    for (Stepper* each : m_steppers)
        each->setEnabled(!writing);
    m_shut = writing;
    showTakeOvers();
}

} // namespace strandbench
