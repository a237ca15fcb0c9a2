// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/pick_screen.h"

#include "school/paged_keys.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {

PickScreen::PickScreen(const Surroundings& around, Spec spec, QWidget* parent)
    : Screen(around, spec.name, parent), m_spec(std::move(spec))
{
    buildFrame(m_spec.context, m_spec.sentence);
    answers()->stop()->hide();
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { m_spec.done(m_picked); });
    auto* keys = new PagedKeys(around, u"more"_s, around.upright ? 2 : 3, this);
    connect(keys, &PagedKeys::pageShown, this, &PickScreen::showPicked);
    content()->addWidget(keys, 1);
    if (m_spec.side)
        content()->addWidget(makeSideKey(theme(), *m_spec.side, this));
    std::vector<PagedKeys::Make> all;
    for (const Item& each : m_spec.items)
        all.push_back([this, item = each](QWidget* page) {
            auto* key = new TapButton(theme(), u"pick_"_s + item.code, TapButton::Kind::Choice, page);
            key->setCheckable(true);
            key->setTitle(item.title);
            connect(key, &TapButton::clicked, this, [this, code = item.code] { pick(code); });
            return key;
        });
    keys->setKeys(std::move(all));
}

void PickScreen::pick(const QString& code)
{
    const auto before = std::ranges::find(m_picked, code);
    if (before == m_picked.end())
        m_picked.push_back(code);
    else
        m_picked.erase(before);
    showPicked();
}

void PickScreen::showPicked()
{
    for (const Item& each : m_spec.items) {
        auto* key = findChild<TapButton*>(u"pick_"_s + each.code); // where its page is shown
        if (!key)
            continue;
        const auto at = std::ranges::find(m_picked, each.code);
        key->setChecked(at != m_picked.end());
        if (m_spec.inOrder)
            key->setSecondLine(at == m_picked.end() ? QString() : tr("number %1").arg(at - m_picked.begin() + 1));
    }
    const bool open = m_spec.mayBeNone || !m_picked.empty();
    answers()->setWayOn(open ? m_spec.wayOn : QString());
}

} // namespace strandbench
