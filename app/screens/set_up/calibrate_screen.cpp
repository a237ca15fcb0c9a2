// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_screen.h"
#include "pictures/picture_access.h"
#include "theme/sizes.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// ISO/IEC 7810, ID-1.
constexpr double cardWidthMm = 85.60;
constexpr double cardHeightMm = 53.98;

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(CalibrateScreen)
};

/// The card as an outline; its size is the widget's business alone, so that it is drawn to the pixel.
class CardOutline final : public QWidget {
public:
    CardOutline(const Theme& theme, const double& ppmm, QWidget* parent) : QWidget(parent), m_theme(theme), m_ppmm(ppmm)
    {
        setObjectName(u"card_outline"_s);
        sayIsPicture(*this);
        setAccessibleName(Says::tr("Outline of a card, 85.6 by 54 mm"));
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const double w = cardWidthMm * m_ppmm;
        const double h = cardHeightMm * m_ppmm;
        // Taller than the glass leaves: the width is what is matched, the lower edge runs out below.
        const QRectF box((width() - w) / 2, std::max(1.0, (height() - h) / 2), w, h);
        const double pen = 0.6 * m_ppmm;
        painter.setPen(QPen(m_theme.color(Role::Action), pen));
        painter.setBrush(m_theme.color(Role::Card));
        painter.drawRoundedRect(box.adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2), 3.18 * m_ppmm, 3.18 * m_ppmm);
    }

private:
    const Theme& m_theme;
    const double& m_ppmm;
};

} // namespace

CalibrateScreen::CalibrateScreen(const Surroundings& around, QWidget* parent)
    : Screen(around, u"screen_calibrate"_s, parent), m_ppmm(around.theme.metrics().pixelsPerMillimetre())
{
    buildFrame(Says::tr("Bank, identity or driving card: all have this width"),
               Says::tr("Make the outline as wide as a card"));
    m_outline = new CardOutline(theme(), m_ppmm, this);
    auto* narrower = new QVBoxLayout;
    auto* wider = new QVBoxLayout;
    narrower->setSpacing(px(sizes::gap));
    wider->setSpacing(px(sizes::gap));
    narrower->addWidget(key(u"much_narrower"_s, u"− 10"_s, -10), 1);
    narrower->addWidget(key(u"narrower"_s, u"− 1"_s, -1), 1);
    wider->addWidget(key(u"much_wider"_s, u"+ 10"_s, 10), 1);
    wider->addWidget(key(u"wider"_s, u"+ 1"_s, 1), 1);
    if (around.upright) {
        content()->addWidget(m_outline, 3);
        auto* keys = new QHBoxLayout;
        keys->setSpacing(px(sizes::gap));
        keys->addLayout(narrower, 1);
        keys->addLayout(wider, 1);
        content()->addLayout(keys, 1);
    } else {
        content()->addLayout(narrower, 1);
        content()->addWidget(m_outline, 4);
        content()->addLayout(wider, 1);
    }
    answers()->setWayOn(Says::tr("The card covers it"));
    answers()->stop()->hide();
    connect(answers(), &AnswerBar::wayOnTapped, this, [this] { Q_EMIT calibrated(m_ppmm); });
}

TapButton* CalibrateScreen::key(const QString& name, const QString& title, double pixels)
{
    auto* made = new TapButton(theme(), name, TapButton::Kind::Plain, this);
    made->setTitle(title);
    made->setAccessibleDescription(pixels > 0 ? Says::tr("wider") : Says::tr("narrower"));
    made->setSecondLine(pixels > 0 ? Says::tr("wider") : Says::tr("narrower"));
    connect(made, &TapButton::clicked, this, [this, pixels] { change(pixels); });
    return made;
}

void CalibrateScreen::change(double pixels)
{
    m_ppmm = std::clamp(m_ppmm + pixels / cardWidthMm, leastPixelsPerMillimetre, mostPixelsPerMillimetre);
    m_outline->update();
}

} // namespace strandbench
