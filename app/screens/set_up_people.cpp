// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up_people.h"

#include "screens/take_in_screen.h"
#include "theme/sizes.h"
#include "touch/hold_button.h"

#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int perPage = 6;

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
    column->addWidget(m_remove, 1);
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

} // namespace strandbench
