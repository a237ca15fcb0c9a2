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
    column->addWidget(label(u"sentence"_s, TextRole::Sentence, tr("The log cannot be opened"), Role::Stop, true));
    auto* card = new Card(theme, this);
    card->setEdge(Role::Stop);
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(margin, margin, margin, margin);
    row->setSpacing(theme.px(4));
    row->addWidget(new SignWidget(theme, Pictogram::StopHand, tr("Stop"), card), 1);
    auto* words = new QVBoxLayout;
    words->addWidget(label(u"trouble_headline"_s, TextRole::Title, text.headline, Role::Ink, true));
    words->addWidget(label(u"trouble_what_to_do"_s, TextRole::Body, text.whatToDo, Role::Ink, false));
    words->addWidget(label(u"trouble_path"_s, TextRole::Small, path, Role::MutedInk, false));
    row->addLayout(words, 3);
    column->addWidget(card, 1);
    auto* close = new TapButton(theme, u"close_program"_s, TapButton::Kind::Way, this);
    close->setTitle(tr("Close the program"));
    close->setFixedHeight(theme.px(sizes::answer));
    connect(close, &TapButton::clicked, this, &QWidget::close);
    column->addWidget(close);
}

void TroubleWindow::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme->color(Role::Ground));
}

} // namespace strandbench
