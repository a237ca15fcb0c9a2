// SPDX-License-Identifier: GPL-3.0-or-later
// A repair on one time axis, planned above actual, with its readings, photos, deviations and its section.
#pragma once

#include "pictures/timeline_picture.h"
#include "review/job_timeline.h"
#include "screens/frame/screen.h"

#include <QImage>

namespace strandbench {

class TapButton;

class TimelineScreen final : public Screen {
    Q_OBJECT
public:
    TimelineScreen(const Surroundings& around, const QUuid& repair, QWidget* parent = nullptr);

private:
    void showRecord(const JobRecord& record, const RepairFile& file);
    void showSpan(bool mixing); ///< from the first mix to the last sanding, or all of it
    [[nodiscard]] TimePicture drawing() const;
    void buildFoot(const JobRecord& record, const RepairFile& file);
    [[nodiscard]] QString spoken() const;
    void showPhotos(const JobRecord& record, const RepairFile& file, QBoxLayout* row);

    TimelinePicture* m_picture = nullptr;
    QBoxLayout* m_foot = nullptr;
    TapButton* m_zoom = nullptr;
    JobTimeline m_line;
    Instant m_begin;
    bool m_mixing = false;
    Worker m_worker; ///< photos are made small beside the glass
};

} // namespace strandbench
