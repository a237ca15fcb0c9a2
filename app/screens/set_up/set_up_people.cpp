// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_people.h"

#include "screens/beside/note_screens.h"
#include "screens/job/take_in_screen.h"
#include "theme/sizes.h"

#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int perPage = 6;
constexpr int longestName = 24; ///< characters: what a tile shows whole
constexpr int mostNames = 24;   ///< four pages

/// Every word with its first letter large: the large keys write small ones after the first.
QString asName(const QString& typed)
{
    QString name = typed.simplified();
    for (qsizetype i = 0; i < name.size(); ++i)
        if (i == 0 || name.at(i - 1) == u' ' || name.at(i - 1) == u'-')
            name[i] = name.at(i).toUpper();
    return name;
}

} // namespace

SetUpPeopleScreen::SetUpPeopleScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpScreen(around, u"screen_set_up_people"_s, place, parent)
{
    const QStringList people = peopleOf(around.settings);
    const int count = static_cast<int>(people.size());
    QWidget* holder = buildPage({}, tr("Who works here?"), std::max(1, (count + perPage - 1) / perPage));
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(sizes::gap));
    auto* grid = new QGridLayout;
    grid->setSpacing(px(sizes::gap));
    const int columns = around.upright ? 2 : 3;
    const int first = page() * perPage;
    for (int i = first; i < std::min(count, first + perPage); ++i) {
        const QString& name = people.at(i);
        TapButton* tile = key(u"person_%1"_s.arg(i), TapButton::Kind::Choice, name,
                              name == around.settings.person ? tr("at the bench") : QString());
        connect(tile, &TapButton::clicked, this, [this, name] { choose(name == m_chosen ? QString() : name); });
        grid->addWidget(tile, (i - first) / columns, (i - first) % columns);
        m_names.push_back(tile);
    }
    for (int i = 0; i < columns; ++i)
        grid->setColumnStretch(i, 1);
    column->addLayout(grid, 2);
    m_remove = new HoldButton(theme(), u"remove_person"_s, TapButton::Kind::Stop, this);
    m_remove->setLeastSize(sizes::denseTarget, sizes::denseTarget);
    connect(m_remove, &HoldButton::held, this, [this] {
        Settings wanted = this->around().settings;
        wanted.people = peopleOf(wanted);
        wanted.people.removeAll(m_chosen);
        if (wanted.person == m_chosen)
            wanted.person.clear();
        Q_EMIT settingsChanged(wanted);
    });
    TapButton* add = key(u"add_person"_s, TapButton::Kind::Plain, tr("Add a name"),
                         count < mostNames ? QString() : tr("%1 names are the most").arg(mostNames));
    add->setEnabled(count < mostNames);
    connect(add, &TapButton::clicked, this, [this] { Q_EMIT placeWanted({SetUpGroup::People, page(), newName}); });
    auto* row = new QHBoxLayout;
    row->setSpacing(px(sizes::gap));
    TapButton* pin =
        key(u"supervisor_pin"_s, TapButton::Kind::Plain, tr("Supervisor’s PIN"),
            around.bench.door() && around.bench.door()->isSet() ? tr("set: change it") : tr("not set yet"));
    connect(pin, &TapButton::clicked, this, &SetUpScreen::pinWanted);
    row->addWidget(add, 1);
    row->addWidget(pin, 1);
    row->addWidget(m_remove, 2);
    column->addLayout(row, 1);
    choose({});
}

void SetUpPeopleScreen::choose(const QString& name)
{
    m_chosen = name;
    for (TapButton* each : m_names)
        each->setChecked(each->title() == name);
    // The last one stays: a bench without anybody would be nobody's.
    const bool last = peopleOf(around().settings).size() <= 1;
    m_remove->setEnabled(!name.isEmpty() && !last);
    m_remove->setTitle(name.isEmpty() ? tr("Take a name off the list") : tr("Take %1 off the list").arg(name));
    m_remove->setSecondLine(name.isEmpty() ? tr("tap a name first")
                            : last         ? tr("the last name stays")
                                           : tr("hold 1 s; what is logged keeps the name"));
}

SetUpNameScreen::SetUpNameScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpScreen(around, u"screen_set_up_name"_s, place, parent)
{
    buildFrame(tr("Bench set-up") + u" · "_s + tr("People"), tr("Write the new name"));
    answers()->stop()->hide();
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    m_typed = label(u"typed_name"_s, TextRole::Title);
    m_keys = new LetterKeys(theme(), around.upright ? 4 : 8, accentsOf(words().locale()), this);
    m_keys->setLongest(longestName);
    column->addWidget(m_typed, 1);
    column->addWidget(m_keys, around.upright ? 4 : 3);
    content()->addLayout(column, 1);
    answers()->setWayOn(tr("Put it on the list"));
    connect(m_keys, &LetterKeys::textChanged, this, &SetUpNameScreen::showTyped);
    connect(m_keys, &LetterKeys::entered, this, &SetUpNameScreen::give);
    connect(answers(), &AnswerBar::wayOnTapped, this, &SetUpNameScreen::give);
    backTo({place.group, place.page});
    showTyped();
    m_keys->setFocus();
}

void SetUpNameScreen::showTyped()
{
    showTrouble({}, {});
    const QString name = asName(m_keys->text());
    m_typed->setText(name.isEmpty() ? u"–"_s : name);
    m_typed->setAccessibleName(name);
}

void SetUpNameScreen::give()
{
    const QString name = asName(m_keys->text());
    if (name.isEmpty())
        return showTrouble(tr("The name is empty."), tr("Write 1 to %1 characters.").arg(longestName));
    Settings wanted = around().settings;
    wanted.people = peopleOf(wanted);
    if (wanted.people.contains(name, Qt::CaseInsensitive))
        return showTrouble(tr("%1 is on the list already.").arg(name),
                           tr("Write it so that the two can be told apart."));
    wanted.people << name;
    Q_EMIT settingsChanged(wanted);
}

} // namespace strandbench
