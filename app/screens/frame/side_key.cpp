// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/side_key.h"

#include "repair/photos.h"
#include "theme/sizes.h"
#include "words/notes.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double keyWidth = 34; // mm
constexpr TextSize title{6.0, 3.4};

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(SideKey)
};

} // namespace

TapButton* makeSideKey(const Theme& theme, const SideKey& key, QWidget* parent)
{
    auto* made = new TapButton(theme, key.name, TapButton::Kind::Plain, parent);
    made->setTitle(key.title);
    made->setTitleSize(title);
    made->setSecondLine(key.second);
    made->setSign(key.sign);
    if (key.picture)
        made->setPicture(key.picture);
    if (!key.spoken.isEmpty())
        made->setAccessibleDescription(key.spoken);
    made->setLeastSize(keyWidth, sizes::target);
    QObject::connect(made, &TapButton::clicked, made, key.tapped);
    return made;
}

std::optional<SideKey> photoKey(const Surroundings& around, const Repair& repair, PhotoMoment moment, const Ways& ways)
{
    if (!ways.photo || repair.handedOverAt)
        return std::nullopt;
    SideKey key;
    key.name = u"photo_"_s + codeOf(moment);
    //: %1 is when: "as found", "bare", "filled", "guide coat"
    key.title = Says::tr("Photo: %1").arg(photoMomentInList(moment));
    const Kept<PhotoTaken>* newest = newestPhoto(repair, moment);
    // The tick says 'taken' where the word itself would not fit beside it.
    key.second = newest ? around.words.clockTime(newest->at) : Says::tr("none yet");
    key.spoken = newest ? Says::tr("taken %1").arg(key.second) : QString();
    key.sign = newest ? Pictogram::Tick : Pictogram::None;
    key.tapped = [ways, moment] { ways.photo(moment); };
    return key;
}

} // namespace strandbench
