// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/beside/camera_screen.h"

#include "pictures/photo_picture.h"
#include "screens/frame/side_key.h"
#include "words/notes.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr qsizetype longestName = 24; // of a device, so that what to do has room beside it

QString shownName(const QString& name) { return name.size() <= longestName ? name : name.left(longestName - 1) + u'…'; }

} // namespace

CameraScreen::CameraScreen(const Surroundings& around, const Repair& repair, PhotoMoment moment, CameraFeed& cameras,
                           QWidget* parent)
    : Screen(around, u"screen_camera"_s, parent),
      m_cameras(cameras),
      m_moment(moment),
      m_taking(around.bench.computing())
{
    buildFrame(contextOf(repair, words()), {});
    m_picture = new PhotoPicture(theme(), u"camera_picture"_s, this);
    content()->addWidget(m_picture, 1);
    buildKeys(content());
    connect(answers(), &AnswerBar::wayOnTapped, this, &CameraScreen::goOn);
    connect(&m_cameras, &CameraFeed::found, this, &CameraScreen::useOf);
    connect(&m_cameras, &CameraFeed::seen, this, &CameraScreen::showView);
    connect(&m_cameras, &CameraFeed::failed, this, [this](quint64 showing, const CameraFault& fault) {
        if (showing == m_showing)
            showFault(fault);
    });
    search();
}

CameraScreen::~CameraScreen() { m_cameras.stop(m_showing); }

void CameraScreen::buildKeys(QBoxLayout* into)
{
    m_keys = new QWidget(this);
    auto* column = new QBoxLayout(around().upright ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, m_keys);
    column->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& name, const QString& title, void (CameraScreen::*tapped)()) {
        TapButton* made =
            makeSideKey(theme(), {name, title, {}, Pictogram::None, [this, tapped] { (this->*tapped)(); }}, m_keys);
        column->addWidget(made, 1);
        return made;
    };
    m_again = add(u"take_again"_s, tr("Take it again"), &CameraScreen::startCamera);
    m_another = add(u"another_camera"_s, tr("Another camera"), &CameraScreen::useAnother);
    into->addWidget(m_keys);
}

void CameraScreen::search()
{
    show(Shows::Search);
    m_searching = true;
    m_cameras.look();
}

void CameraScreen::useOf(const std::vector<CameraDevice>& cameras)
{
    if (!m_searching)
        return;
    m_searching = false;
    m_found = cameras;
    const auto last = std::find_if(m_found.begin(), m_found.end(),
                                   [this](const CameraDevice& each) { return each.path == m_cameras.lastShown(); });
    m_used = last == m_found.end() ? 0 : static_cast<std::size_t>(last - m_found.begin());
    if (!m_found.empty())
        return startCamera();
    show(Shows::Trouble);
    showTrouble(tr("No camera is there."), tr("Plug the camera in again, or choose from a folder."));
}

void CameraScreen::startCamera()
{
    if (m_taking.busy())
        return;
    show(Shows::Search);
    m_view = {};
    m_picture->setPhoto({});
    m_showing = m_cameras.start(m_found[m_used].path, parentWidget() ? parentWidget()->size() : size());
}

void CameraScreen::useAnother()
{
    m_used = (m_used + 1) % m_found.size();
    startCamera();
}

void CameraScreen::show(Shows shows)
{
    m_shows = shows;
    showTrouble({}, {});
    const QString when = photoMomentInList(m_moment);
    switch (shows) {
    case Shows::Search:
    case Shows::Live:
        setSentence(shows == Shows::Live ? tr("Point the camera: %1").arg(when) : tr("Waiting for the camera"));
        answers()->setWayOn(tr("Take the photo"));
        m_picture->setAccessibleName(tr("What the camera sees"));
        break;
    case Shows::Still:
        setSentence(tr("Check the photo: %1").arg(when));
        answers()->setWayOn(tr("Keep this photo"), TapButton::Kind::Go);
        m_picture->setAccessibleName(tr("The photo taken"));
        break;
    case Shows::Trouble:
        answers()->setWayOn(tr("Try again"));
        break;
    }
    answers()->setWayOnEnabled(shows != Shows::Search);
    m_again->setVisible(shows == Shows::Still);
    m_another->setVisible(shows != Shows::Still && m_found.size() > 1);
    m_keys->setVisible(!m_again->isHidden() || !m_another->isHidden());
}

void CameraScreen::showView(quint64 showing, const CameraView& view)
{
    if (showing != m_showing)
        return;
    if (m_shows == Shows::Search)
        show(Shows::Live);
    m_view = view;
    m_picture->setPhoto(view.small);
}

void CameraScreen::goOn()
{
    switch (m_shows) {
    case Shows::Search:
        return;
    case Shows::Live: // what is shown is what was seen last: the tap takes this one and no later one
        m_cameras.stop(m_showing);
        m_showing = 0;
        return show(Shows::Still);
    case Shows::Still:
        return keepStill();
    case Shows::Trouble:
        return search();
    }
}

void CameraScreen::keepStill()
{
    if (m_taking.busy())
        return;
    showTrouble({}, {});
    const QString name = m_found[m_used].name;
    m_taking.ask([this, frame = m_view.frame, name] {
        const auto made = std::make_shared<tl::expected<PhotoFile, PhotoFault>>(photoOf(frame.jpeg(), name));
        return [this, made] {
            if (*made)
                return Q_EMIT chosen(**made);
            const CameraTroubleText text = troubleOf(made->error());
            showTrouble(text.headline, text.whatToDo);
        };
    });
}

void CameraScreen::showFault(const CameraFault& fault)
{
    m_showing = 0;
    m_view = {};
    m_picture->setPhoto({});
    show(Shows::Trouble);
    const CameraDevice& used = m_found[m_used]; // one that did not open has not said its name
    const CameraTroubleText text = troubleOf(fault, shownName(fault.device == used.path ? used.name : fault.device));
    showTrouble(text.headline, text.whatToDo);
}

CameraTroubleText CameraScreen::troubleOf(const CameraFault& fault, const QString& name)
{
    const QString plugIn = tr("Plug the camera in again, or choose from a folder.");
    switch (fault.why) {
    case CameraFault::Why::Gone:
        //: %1 is what the camera calls itself
        return {tr("%1 is not there any more.").arg(name), plugIn};
    case CameraFault::Why::InUse:
        return {tr("%1 is in use elsewhere.").arg(name), tr("End what uses it, or choose from a folder.")};
    case CameraFault::Why::NotAllowed:
        return {tr("The bench may not use %1.").arg(name), tr("Have it allowed, or choose from a folder.")};
    case CameraFault::Why::NoCapture:
    case CameraFault::Why::NoFormat:
        return {tr("%1 gives no picture that can be kept.").arg(name),
                tr("Take another camera, or choose from a folder.")};
    case CameraFault::Why::NoPicture:
        return {tr("%1 sends no picture.").arg(name), plugIn};
    case CameraFault::Why::Refused:
        break;
    }
    //: %1 is what the camera calls itself, %2 what the system says
    return {tr("%1 failed: %2.").arg(name, fault.detail), plugIn};
}

CameraTroubleText CameraScreen::troubleOf(const PhotoFault& fault)
{
    const QString again = tr("Take it again, or choose from a folder.");
    if (fault.why == PhotoFault::Why::TooLarge)
        return {tr("The photo is larger than %1 MB.").arg(mostPhotoBytes / (qint64{1024} * 1024)), again};
    return {tr("%1 gave no whole picture.").arg(shownName(fault.name)), again};
}

void CameraScreen::setWriting(bool writing)
{
    Screen::setWriting(writing);
    m_keys->setEnabled(!writing);
}

} // namespace strandbench
