// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/record_row.h"

#include "screens/frame/sign_widget.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double rowWide = 14;    // mm: two lines
constexpr double rowUpright = 18; // three
constexpr double whenWide = 34;
constexpr double whenUpright = 28;
constexpr double signWidth = 9;

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(RecordScreen)
};

} // namespace

double recordRowHeight(const Surroundings& around) { return around.upright ? rowUpright : rowWide; }

QWidget* makeRecordRow(const Surroundings& around, const RecordRow& row, QWidget* parent)
{
    const Theme& theme = around.theme;
    const auto px = [&theme](double mm) { return theme.px(mm); };
    auto* made = new Card(theme, parent);
    made->setObjectName(row.name);
    auto* across = new QHBoxLayout(made);
    across->setContentsMargins(px(2), px(0.8), px(2), px(0.8));
    across->setSpacing(px(2));
    if (row.deviates) {
        auto* sign = new SignWidget(theme, Pictogram::Caution, Says::tr("Deviation"), made);
        sign->setFixedWidth(px(signWidth));
        across->addWidget(sign);
    }
    auto* left = new QVBoxLayout;
    left->setSpacing(0);
    for (const auto& [name, text] : {std::pair{u"_when"_s, row.when}, std::pair{u"_who"_s, row.who}}) {
        auto* line = new FitLabel(theme, row.name + name, TextRole::Small, made);
        line->setRole(Role::MutedInk);
        line->setText(text);
        line->setLines(1);
        left->addWidget(line, 1);
    }
    auto* box = new QWidget(made);
    left->setContentsMargins(0, 0, 0, 0);
    box->setLayout(left);
    box->setFixedWidth(px((around.upright ? whenUpright : whenWide) - (row.deviates ? signWidth + 2 : 0)));
    across->addWidget(box);
    auto* text = new FitLabel(theme, row.name + u"_text"_s, TextRole::Body, made);
    text->setText(row.text);
    text->setBold(row.deviates);
    across->addWidget(text, 1);
    return made;
}

} // namespace strandbench
