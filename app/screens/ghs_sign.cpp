// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/ghs_sign.h"

#include "words/harm_words.h"

#include <QPaintEvent>

using namespace Qt::StringLiterals;

namespace strandbench {

GhsSign::GhsSign(const Theme& theme, std::vector<GhsPictogram> pictograms, double sizeMm, QWidget* parent)
    : QWidget(parent), m_pictograms(std::move(pictograms))
{
    setObjectName(u"ghs_sign"_s);
    setAccessibleName(spokenPictograms(m_pictograms));
    setFixedSize(theme.px(sizeMm) * static_cast<int>(m_pictograms.size()), theme.px(sizeMm));
}

void GhsSign::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintGhsPictograms(painter, QRectF(rect()), m_pictograms);
}

QString spokenPictograms(const std::vector<GhsPictogram>& pictograms)
{
    QStringList spoken;
    for (const GhsPictogram each : pictograms)
        spoken << codeOf(each) + u' ' + words::pictogramName(each);
    return spoken.join(u", "_s);
}

} // namespace strandbench
