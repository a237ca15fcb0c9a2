// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/picture_access.h"

#include "pictures/dew_picture.h"
#include "pictures/drawing_widget.h"
#include "pictures/mix_block.h"
#include "pictures/phase_ribbon.h"
#include "pictures/photo_picture.h"
#include "pictures/puddle_picture.h"
#include "pictures/section_picture.h"
#include "pictures/step_picture.h"

#include <QAccessibleWidget>

namespace strandbench {
namespace {

constexpr char markOfPictures[] = "strandbench_is_picture";

/// A block is a button: it can be pressed from afar.
class BlockInterface final : public QAccessibleWidget {
public:
    explicit BlockInterface(MixBlock* block) : QAccessibleWidget(block, QAccessible::Button) {}

    [[nodiscard]] QStringList actionNames() const override
    {
        QStringList names = QAccessibleWidget::actionNames();
        names.prepend(pressAction());
        return names;
    }

    void doAction(const QString& name) override
    {
        if (name == pressAction())
            static_cast<MixBlock*>(widget())->click();
        else
            QAccessibleWidget::doAction(name);
    }
};

QAccessibleInterface* pictureInterface(const QString&, QObject* object)
{
    if (auto* block = qobject_cast<MixBlock*>(object))
        return new BlockInterface(block);
    const bool picture = object->property(markOfPictures).toBool() || qobject_cast<SectionPicture*>(object) ||
                         qobject_cast<PuddlePicture*>(object) || qobject_cast<PhaseRibbon*>(object) ||
                         qobject_cast<StepPicture*>(object) || qobject_cast<PhotoPicture*>(object) ||
                         qobject_cast<DewPicture*>(object) || qobject_cast<DrawingWidget*>(object);
    return picture ? new QAccessibleWidget(static_cast<QWidget*>(object), QAccessible::Graphic) : nullptr;
}

} // namespace

void installPictureAccess()
{
    static const bool installed = [] {
        QAccessible::installFactory(pictureInterface);
        return true;
    }();
    Q_UNUSED(installed);
}

void sayIsPicture(QWidget& picture)
{
    picture.setProperty(markOfPictures, true);
    installPictureAccess();
}

} // namespace strandbench
