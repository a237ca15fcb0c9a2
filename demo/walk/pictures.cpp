// SPDX-License-Identifier: GPL-3.0-or-later
#include "walk/pictures.h"

#include "touch/fit_label.h"

using namespace Qt::StringLiterals;

namespace strandbench {

bool Pictures::keep(BenchWindow& window, const QString& name)
{
    if (m_kept.contains(name))
        return true;
    m_kept.insert(name);
    const QString file = u"%1_%2.png"_s.arg(m_kept.size(), 2, 10, QChar(u'0')).arg(name);
    const QImage picture = window.grab().toImage();
    if (kept)
        kept(name, picture);
    return picture.save(m_folder.filePath(file));
}

bool Pictures::keepScreen(BenchWindow& window)
{
    QString name = window.screen()->objectName().mid(QStringView(u"screen_").size());
    if (const auto* typed = window.findChild<FitLabel*>(u"typed"_s); typed && typed->isVisible())
        name += u"_keys"_s;
    return keep(window, name);
}

} // namespace strandbench
