// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/record/timeline_screen.h"

#include "bench/photo_file.h"
#include "pictures/photo_picture.h"
#include "pictures/picture_access.h"
#include "pictures/section_picture.h"
#include "repair/photos.h"
#include "screens/job/station_words.h"
#include "screens/record/with_record.h"
#include "theme/sizes.h"
#include "touch/tap_button.h"
#include "words/notes.h"
#include "words/review_words.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double footHeight = 24; // mm
constexpr double zoomWidth = 34;
constexpr double aroundMixing = 5; // minutes kept free before and after

/// A section without a word in it: its figures stand in the plan.
class SectionStrip final : public QWidget {
public:
    SectionStrip(const Theme& theme, QWidget* parent) : QWidget(parent), m_theme(theme)
    {
        setObjectName(u"timeline_section"_s);
        sayIsPicture(*this);
    }
    void setDrawing(const SectionDrawing& drawing)
    {
        m_drawing = drawing;
        update();
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        paintSection(painter, rect(), m_drawing, m_theme);
    }

private:
    const Theme& m_theme;
    SectionDrawing m_drawing;
};

double minutesOf(Duration time) { return inMinutes(time); }

std::vector<TimeBar> barsOf(const std::vector<JobSpan>& spans, bool parked)
{
    std::vector<TimeBar> bars;
    for (const JobSpan& each : spans)
        if ((each.kind == SpanKind::Parked) == parked)
            bars.push_back({static_cast<int>(each.kind), minutesOf(each.from), minutesOf(each.to)});
    return bars;
}

} // namespace

TimelineScreen::TimelineScreen(const Surroundings& around, const QUuid& repair, QWidget* parent)
    : Screen(around, u"screen_timeline"_s, parent), m_worker(around.bench.computing())
{
    buildFrame({}, tr("Planned and done"));
    answers()->setWayOn({});
    answers()->stop()->hide();
    auto* column = new QVBoxLayout;
    column->setSpacing(px(1.5));
    m_picture = new TimelinePicture(theme(), u"timeline"_s, this);
    m_picture->setAccessibleName(tr("Planned and done"));
    column->addWidget(m_picture, 3);
    auto* foot = new QWidget(this);
    m_foot = new QHBoxLayout(foot);
    m_foot->setContentsMargins(0, 0, 0, 0);
    m_foot->setSpacing(px(2));
    foot->setFixedHeight(px(footHeight));
    column->addWidget(foot);
    content()->addLayout(column, 1);
    withRecord(around, this, repair,
               [this](const JobRecord& record, const RepairFile& file) { showRecord(record, file); });
}

void TimelineScreen::showRecord(const JobRecord& record, const RepairFile& file)
{
    const Catalogue& catalogue = around().bench.planning().catalogue;
    setContext(contextOf(record.repair, words()));
    m_line = timelineOf(record, deviationsOf(record, catalogue, limitsFrom(around().bench.assumptions())));
    m_begin = record.repair.takenInAt;
    buildFoot(record, file);
    showSpan(false);
}

void TimelineScreen::buildFoot(const JobRecord& record, const RepairFile& file)
{
    m_zoom = new TapButton(theme(), u"zoom"_s, TapButton::Kind::Plain, this);
    m_zoom->setLeastSize(sizes::denseTarget, sizes::denseTarget);
    m_zoom->setFixedWidth(px(zoomWidth));
    m_zoom->setTitleSize({4.6, 3.4});
    m_zoom->setVisible(!record.batches.empty());
    connect(m_zoom, &TapButton::clicked, this, [this] { showSpan(!m_mixing); });
    m_foot->addWidget(m_zoom);
    if (record.repair.assessment.damage) {
        auto* section = new SectionStrip(theme(), this);
        SectionDrawing drawing = record.repair.plan ? SectionDrawing::of(record.repair.assessment, *record.repair.plan,
                                                                         around().bench.assumptions())
                                                    : SectionDrawing::of(record.repair.assessment);
        drawing.progress = progressOf(record.repair);
        section->setDrawing(drawing);
        section->setAccessibleName(tr("Section of the repair"));
        m_foot->addWidget(section, 2);
    }
    showPhotos(record, file, m_foot);
}

void TimelineScreen::showPhotos(const JobRecord& record, const RepairFile& file, QBoxLayout* row)
{
    std::vector<std::pair<PhotoPicture*, QByteArray>> wanted;
    for (const auto& [moment, code] : Codes<PhotoMoment>::table) {
        const Kept<PhotoTaken>* newest = newestPhoto(record.repair, moment);
        const auto found = newest ? file.pictures.find(newest->what.hash) : file.pictures.end();
        if (found == file.pictures.end())
            continue;
        auto* picture = new PhotoPicture(theme(), u"timeline_photo_"_s + QString::fromLatin1(code), this);
        picture->setAccessibleName(photoMomentInList(moment));
        row->addWidget(picture, 1);
        wanted.emplace_back(picture, found->second);
    }
    if (wanted.empty())
        return row->addStretch(1);
    const QSize box(px(40), px(footHeight));
    m_worker.ask([wanted, box]() -> Worker::Show {
        std::vector<QImage> small;
        for (const auto& [picture, bytes] : wanted)
            small.push_back(smallPicture(bytes, box));
        return [wanted, small] { // the screen shows nothing once it has gone
            for (std::size_t i = 0; i < small.size(); ++i)
                wanted[i].first->setPhoto(small[i]);
        };
    });
}

void TimelineScreen::showSpan(bool mixing)
{
    m_mixing = mixing;
    m_zoom->setTitle(mixing ? tr("The whole job") : tr("Mix to sanding"));
    m_picture->setPicture(drawing());
    m_picture->setAccessibleDescription(spoken());
}

TimePicture TimelineScreen::drawing() const
{
    TimePicture picture;
    const double length = std::max(1.0, minutesOf(m_line.length));
    picture.from = m_mixing ? std::max(0.0, minutesOf(m_line.firstMix) - aroundMixing) : 0.0;
    picture.to = m_mixing ? std::min(length, minutesOf(m_line.lastSanded) + aroundMixing) : length;
    picture.planned = barsOf(m_line.planned, false);
    picture.actual = barsOf(m_line.actual, false);
    picture.parked = barsOf(m_line.actual, true);
    for (const auto& each : m_line.readings)
        picture.marks.push_back({TimeMarkShape::Diamond, minutesOf(each.at)});
    for (const auto& each : m_line.photos)
        picture.marks.push_back({TimeMarkShape::Square, minutesOf(each.at)});
    for (const auto& each : m_line.deviations)
        picture.marks.push_back({TimeMarkShape::Triangle, minutesOf(each.at)});
    picture.plannedName = tr("planned");
    picture.actualName = tr("done");
    picture.marksName = tr("told");
    for (const auto& [kind, code] : Codes<SpanKind>::table)
        picture.looks.push_back(spanName(kind));
    picture.markNames = {tr("reading"), tr("photo"), tr("deviation")};
    picture.clock = [words = words(), begin = m_begin, days = length > 24 * 60](double minute) {
        const Instant at{begin.utcMs + qRound64(minute * 60'000), begin.boottimeMs, begin.bootId,
                         begin.utcOffsetSeconds};
        return days ? localDay(at).mid(5) + u' ' + words.clockTime(at) : words.clockTime(at);
    };
    return picture;
}

QString TimelineScreen::spoken() const
{
    QStringList parts;
    for (const JobSpan& each : m_line.actual)
        //: a part of the work and how long it took
        parts << tr("%1 %2").arg(spanName(each.kind), words().longDuration(each.to - each.from));
    return parts.join(u", "_s);
}

} // namespace strandbench
