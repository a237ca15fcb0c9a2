// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/take_in_screen.h"

#include "bench/settings.h"
#include "screens/frame/choice_screen.h"
#include "screens/frame/scan_text.h"
#include "theme/sizes.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestJobNumber = 10;

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(TakeInScreen)
};

/// What keeps a scanned text from being a name or a number, in words; empty when nothing does.
std::optional<QString> scanTroubleIn(const QString& text)
{
    const auto trouble = scanTrouble(text);
    if (!trouble)
        return std::nullopt;
    switch (*trouble) {
    case ScanTrouble::Empty:
        return Says::tr("The code is empty.");
    case ScanTrouble::ControlCharacter:
        return Says::tr("The code holds a control character.");
    case ScanTrouble::TooLong:
        return Says::tr("The code has %1 characters.").arg(text.size());
    }
    Q_UNREACHABLE();
}

QString scanAllowed() { return Says::tr("Scan 1 to %1 letters and figures.").arg(longestScan); }

/// A screen of plain names as tiles; a tap hands the name over.
ChoiceScreen* makeNames(const Surroundings& around, ChoiceScreen::Spec spec, const QStringList& names,
                        const QString& chosen, const std::function<void(const QString&)>& tapped, QWidget* parent)
{
    int number = 0;
    for (const QString& each : names)
        spec.tiles.push_back(
            {u"name_%1"_s.arg(number++), each, {}, {}, false, each == chosen, [tapped, each] { tapped(each); }});
    spec.moreTitle = Says::tr("More");
    return new ChoiceScreen(around, std::move(spec), parent);
}

} // namespace

JobNumberScreen::JobNumberScreen(const Surroundings& around, const QString& number, QWidget* parent)
    : Screen(around, u"screen_job_number"_s, parent)
{
    const QString person = around.settings.person;
    buildFrame(Says::tr("Take in · %1").arg(person), Says::tr("Key in the job number"));
    auto* row = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    row->setSpacing(px(sizes::gap));
    m_number = label(u"job_number"_s, TextRole::BigFigure, {}, Role::Ink, true);
    m_number->setAlignment(Qt::AlignCenter);
    m_keys = new KeyPad(theme(), around.upright ? 4 : 6, this);
    m_keys->setPointAllowed(false);
    m_keys->setLongest(longestJobNumber);
    if (!m_keys->setText(number))
        m_scanned = number;
    row->addWidget(m_number, 1);
    row->addWidget(m_keys, 3);
    content()->addLayout(row, 1);
    answers()->setWayOn(Says::tr("That is the job"));
    connect(m_keys, &KeyPad::textChanged, this, [this](const QString& keyed) {
        m_scanned.clear();
        showNumber(keyed);
    });
    connect(answers(), &AnswerBar::wayOnTapped, this, &JobNumberScreen::give);
    showNumber(number);
}

void JobNumberScreen::showNumber(const QString& number)
{
    m_number->setText(number.isEmpty() ? u"–"_s : number);
    showTrouble({}, {});
}

bool JobNumberScreen::scanned(const QString& text)
{
    const QString number = text.trimmed();
    if (const auto trouble = scanTroubleIn(number))
        showTrouble(*trouble, scanAllowed());
    else
        Q_EMIT numberGiven(number);
    return true;
}

QVariantMap JobNumberScreen::draft() const
{
    return m_keys->text().isEmpty() ? QVariantMap() : QVariantMap{{u"number"_s, m_keys->text()}};
}

void JobNumberScreen::setDraft(const QVariantMap& draft)
{
    m_keys->setText(draft.value(u"number"_s).toString());
    showNumber(m_keys->text());
}

void JobNumberScreen::give()
{
    if (!m_scanned.isEmpty()) {
        Q_EMIT numberGiven(m_scanned);
        return;
    }
    if (m_keys->text().isEmpty())
        return showTrouble(Says::tr("The job number is empty."),
                           Says::tr("Key in 1 to %1 digits.").arg(longestJobNumber));
    Q_EMIT numberGiven(m_keys->text());
}

QStringList panelNames()
{
    return {Says::tr("Skirt panel, right rear"),
            Says::tr("Skirt panel, left front"),
            Says::tr("Bumper corner, left"),
            Says::tr("Bumper corner, right"),
            Says::tr("Roof cap, front"),
            Says::tr("Luggage door, left"),
            Says::tr("Luggage door, right"),
            Says::tr("Wheel arch, left"),
            Says::tr("Wheel arch, right"),
            Says::tr("Engine cover"),
            Says::tr("Front apron"),
            Says::tr("Battery door"),
            Says::tr("Another panel")};
}

QStringList peopleOf(const Settings& settings)
{
    if (!settings.people.isEmpty())
        return settings.people;
    return {Says::tr("Technician 1"), Says::tr("Technician 2"), Says::tr("Technician 3"), Says::tr("Apprentice")};
}

Screen* makePanelScreen(const Surroundings& around, const QString& job, std::function<void(const QString&)> taken,
                        QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_panel"_s;
    spec.context = around.words.jobLabel(job) + u" · "_s + around.settings.person;
    spec.sentence = Says::tr("Which panel is it?");
    QStringList names = around.settings.panels.mid(0, mostRecentPanels);
    for (const QString& each : panelNames())
        if (!names.contains(each))
            names << each;
    ChoiceScreen* screen = makeNames(around, std::move(spec), names, {}, taken, parent);
    screen->onScan([screen, taken](const QString& text) {
        const QString panel = text.trimmed();
        if (const auto trouble = scanTroubleIn(panel))
            screen->showTrouble(*trouble, scanAllowed());
        else
            taken(panel);
        return true;
    });
    return screen;
}

Screen* makePersonScreen(const Surroundings& around, std::function<void(const QString&)> chosen, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_person"_s;
    spec.sentence = Says::tr("Who is at the bench?");
    return makeNames(around, std::move(spec), peopleOf(around.settings), around.settings.person, chosen, parent);
}

} // namespace strandbench
