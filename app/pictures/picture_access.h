// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures tell assistive technology that they are pictures; the screens name them with a sentence.
#pragma once

class QWidget;

namespace strandbench {

/// Registers the role Graphic for the picture widgets; does it once however often it is called.
void installPictureAccess();

/// Gives the role to a picture of a library above this one.
void sayIsPicture(QWidget& picture);

} // namespace strandbench
