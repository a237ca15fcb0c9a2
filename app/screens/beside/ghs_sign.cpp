// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/beside/ghs_sign.h"

#include "pictures/picture_access.h"
#include "words/harm_words.h"

#include <QPaintEvent>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int mostInARow = 4;
constexpr double twoRows = 1.5; // the height of two rows of smaller ones, in that of one

} // namespace

GhsSign::GhsSign(const Theme& theme, std::vector<GhsPictogram> pictograms, double sizeMm, QWidget* parent)
    : QWidget(parent), m_pictograms(std::move(pictograms))
{
    setObjectName(u"ghs_sign"_s);
    sayIsPicture(*this);
    setAccessibleName(spokenPictograms(m_pictograms));
    const int count = static_cast<int>(m_pictograms.size());
    const double height = count > mostInARow ? sizeMm * twoRows : sizeMm;
    setFixedSize(theme.px(sizeMm) * std::min(count, mostInARow), theme.px(height));
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
