// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/trouble_window.h"

#include "screens/sign_widget.h"
#include "theme/sizes.h"
#include "touch/card.h"
#include "touch/fit_label.h"
#include "touch/tap_button.h"
#include "words/log_trouble.h"

#include <QPainter>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace strandbench {

TroubleWindow::TroubleWindow(const LogFailure& failure, const QString& path, const Settings& settings,
                             double screenPixelsPerMillimetre)
    : m_theme(std::make_unique<Theme>(
          Metrics(settings.pixelsPerMillimetre > 0 ? settings.pixelsPerMillimetre : screenPixelsPerMillimetre),
          settings.dayNight, settings.hand))
{
    setObjectName(u"trouble_window"_s);
    const Theme& theme = *m_theme;
    const LogTroubleText text = strandbench::logTrouble(failure.trouble);
    auto* column = new QVBoxLayout(this);
    const int margin = theme.px(sizes::margin);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(theme.px(sizes::gap));
    const auto label = [&](const QString& name, TextRole role, const QString& words, Role ink, bool bold) {
        auto* made = new FitLabel(theme, name, role, this);
        made->setRole(ink);
        made->setBold(bold);
        made->setText(words);
        return made;
    };
    const bool inUse = failure.trouble == LogTrouble::InUse;
    column->addWidget(label(u"sentence"_s, TextRole::Sentence,
                            inUse ? tr("This bench is in use") : tr("The log cannot be opened"), Role::Stop, true));
    auto* card = new Card(theme, this);
    card->setEdge(Role::Stop);
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(margin, margin, margin, margin);
    row->setSpacing(theme.px(4));
    row->addWidget(new SignWidget(theme, Pictogram::StopHand, tr("Stop"), card), 1);
    auto* words = new QVBoxLayout;
    words->addWidget(label(u"trouble_headline"_s, TextRole::Title, text.headline, Role::Ink, true));
    words->addWidget(label(u"trouble_what_to_do"_s, TextRole::Body, text.whatToDo, Role::Ink, false));
    if (inUse) // which program has it, in the system's own terms
        words->addWidget(label(u"trouble_who"_s, TextRole::Body, failure.detail, Role::Ink, false));
    words->addWidget(label(u"trouble_path"_s, TextRole::Small, path, Role::MutedInk, false));
    row->addLayout(words, 3);
    column->addWidget(card, 1);
    auto* keys = new QHBoxLayout;
    keys->setSpacing(theme.px(sizes::gap));
    keys->addWidget(key(u"close_program"_s, tr("Close the program"), Way::Close));
    if (inUse) {
        keys->addWidget(key(u"try_again"_s, tr("Try again"), Way::Again));
        keys->addWidget(key(u"look_only"_s, tr("Look only"), Way::Look));
    }
    column->addLayout(keys);
}

TapButton* TroubleWindow::key(const QString& name, const QString& title, Way way)
{
    auto* made = new TapButton(*m_theme, name, TapButton::Kind::Way, this);
    made->setTitle(title);
    made->setFixedHeight(m_theme->px(sizes::answer));
    connect(made, &TapButton::clicked, this, [this, way] {
        m_chosen = way;
        close();
    });
    return made;
}

void TroubleWindow::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme->color(Role::Ground));
}

} // namespace strandbench
