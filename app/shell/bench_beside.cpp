// SPDX-License-Identifier: GPL-3.0-or-later
// What is recorded beside the steps, and what comes in beside the glass: photos, notes, parking, scans.
#include "screens/job/ask_screen.h"
#include "screens/beside/camera_screen.h"
#include "screens/beside/harm_screen.h"
#include "screens/beside/note_screens.h"
#include "screens/beside/photo_screens.h"
#include "screens/frame/scan_text.h"
#include "screens/job/take_in_screen.h"
#include "shell/bench_window.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Duration scanTold = seconds(5); ///< how long it stands that a scan was not wanted

} // namespace

Screen* BenchWindow::makeBeside(const Repair& repair)
{
    switch (m_place) {
    case Place::Ask:
        return askScreenOf(
            *m_around, repair, ways(), [this] { place(Place::ParkWhy); }, this);
    case Place::ParkWhy:
        return parkWhyScreen(
            *m_around, repair,
            [this](const QString& reason) {
                m_parkReason = reason;
                place(Place::ParkTo);
            },
            this);
    case Place::ParkTo:
        return parkToScreen(*m_around, repair, m_parkReason, this);
    case Place::Harm:
        return new HarmScreen(*m_around, repair, harmHere(*m_around, repair, m_look), this);
    case Place::PhotoPick:
        return makePhotoPick(repair);
    case Place::PhotoFolder:
        return makePhotoFolder();
    case Place::Camera:
        return makeCamera(repair);
    case Place::Notes:
        return makeNotesScreen(
            *m_around, repair, [this](const Noted& note) { keep(note, {}, Place::Notes); },
            [this] { place(Place::NoteText); }, ways().present, this);
    case Place::NoteText: {
        auto* screen = new NoteTextScreen(*m_around, repair, this);
        connect(screen, &NoteTextScreen::written, this, [this](const Noted& note) { keep(note, {}, Place::Notes); });
        return screen;
    }
    default:
        break;
    }
    return makePhotosScreen(
        *m_around, repair, [this](PhotoMoment moment) { choosePhoto(moment, Place::Photos); }, ways().present, this);
}

Screen* BenchWindow::makePhotoPick(const Repair& repair)
{
    auto* screen =
        new PhotoPickScreen(*m_around, repair, m_photoMoment, photoFolderOf(m_parts.settings), m_parts.cameras, this);
    connect(screen, &PhotoPickScreen::chosen, this, &BenchWindow::keepPhoto);
    connect(screen, &PhotoPickScreen::cameraWanted, this, [this] { place(Place::Camera); });
    connect(screen, &PhotoPickScreen::folderWanted, this, [this] {
        m_folderLookedAt = photoFolderOf(m_parts.settings);
        place(Place::PhotoFolder);
    });
    return screen;
}

Screen* BenchWindow::makeCamera(const Repair& repair)
{
    auto* screen = new CameraScreen(*m_around, repair, m_photoMoment, *m_parts.cameras, this);
    connect(screen, &CameraScreen::chosen, this, &BenchWindow::keepPhoto);
    return screen;
}

void BenchWindow::keepPhoto(const PhotoFile& photo)
{
    keep(PhotoTaken{m_photoMoment, photo.hash, photo.mediaType}, {photo.bytes}, m_afterPhoto);
}

Screen* BenchWindow::makePhotoFolder()
{
    return makeFolderScreen(
        *m_around, tr("In which folder are the pictures?"), m_folderLookedAt,
        [this](const QString& folder) {
            m_folderLookedAt = folder;
            place(Place::PhotoFolder);
        },
        [this](const QString& folder) {
            Settings wanted = m_parts.settings;
            wanted.photoFolder = folder;
            remember(wanted, Place::PhotoPick);
        },
        this);
}

void BenchWindow::choosePhoto(PhotoMoment moment, Place after)
{
    m_photoMoment = moment;
    m_afterPhoto = after;
    place(Place::PhotoPick);
}

void BenchWindow::keep(const Payload& payload, const std::vector<QByteArray>& bytes, Place after)
{
    write(*m_repair, payload, bytes, [this, after] { place(after); });
}

void BenchWindow::keepPanel(const QString& panel)
{
    Settings wanted = m_parts.settings;
    QStringList& recent = wanted.panels;
    recent.removeAll(panel);
    recent.prepend(panel);
    recent = recent.mid(0, mostRecentPanels);
    remember(wanted);
}

void BenchWindow::takeScan(const QString& text)
{
    if (m_writing || !m_screen->scanned(text))
        tellScan(tr("Scanned %1: not wanted here.").arg(shownScan(text)));
}

void BenchWindow::tellScan(const QString& text)
{
    m_screen->showTrouble(text, {});
    m_scanTold = std::pair(m_screen->troubleShown(), m_parts.bench.clock().now());
}

void BenchWindow::forgetScan()
{
    if (!m_scanTold || elapsed(m_scanTold->second, m_parts.bench.clock().now()) < scanTold)
        return;
    if (m_screen->troubleShown() == m_scanTold->first)
        m_screen->showTrouble({}, {});
    m_scanTold.reset();
}

} // namespace strandbench
