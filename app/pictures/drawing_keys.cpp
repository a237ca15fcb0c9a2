// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/drawing_keys.h"

#include <QRegularExpression>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {

const std::map<QString, Role>& drawingKeys()
{
    // Roles that share a colour by day part at night: each but the first has the last digits changed.
    static const std::map<QString, Role> keys{
        {u"#16202B"_s, Role::Ink},          {u"#16202C"_s, Role::OnCaution},     {u"#3F4A55"_s, Role::MutedInk},
        {u"#FFFFFF"_s, Role::Card},         {u"#FFFFFE"_s, Role::OnAction},      {u"#FFFFFD"_s, Role::OnStop},
        {u"#FFFFFC"_s, Role::OnGo},         {u"#0A4D86"_s, Role::Action},        {u"#075A31"_s, Role::Go},
        {u"#F7C21A"_s, Role::Caution},      {u"#9C1218"_s, Role::Stop},          {u"#BDB7A8"_s, Role::SoftEdge},
        {u"#B9D2C6"_s, Role::LaminateFill}, {u"#2F6B57"_s, Role::LaminateHatch}, {u"#AAB7AF"_s, Role::SmcFill},
        {u"#3C4A44"_s, Role::SmcFleck},     {u"#AEB6C1"_s, Role::MetalFill},     {u"#4A5462"_s, Role::MetalHatch},
        {u"#E3E8EE"_s, Role::ZincFill},     {u"#D98B5B"_s, Role::FillerFill},    {u"#8A4420"_s, Role::FillerFleck},
        {u"#E8CFAE"_s, Role::FinishFill},   {u"#7A1F2B"_s, Role::HardenerFill},  {u"#F2F0EA"_s, Role::Hole},
        {u"#16202D"_s, Role::RibbonGround}, {u"#2B3644"_s, Role::RibbonBlock},   {u"#C5CDD6"_s, Role::OnRibbonMuted},
    };
    return keys;
}

const std::map<QString, QColor>& drawingColoursOfLaw()
{
    static const std::map<QString, QColor> colours{
        {u"#101010"_s, QColor(0x10, 0x10, 0x10)}, {u"#D6001C"_s, QColor(0xD6, 0x00, 0x1C)}, {u"#FEFEFE"_s, Qt::white}};
    return colours;
}

QString recoloured(const QString& drawing, const Theme& theme, const QColor& ink)
{
    static const QRegularExpression colour(u"#[0-9A-Fa-f]{6}\\b"_s);
    QString done;
    qsizetype from = 0;
    for (auto each = colour.globalMatch(drawing); each.hasNext();) {
        const QRegularExpressionMatch match = each.next();
        const QString key = match.captured();
        done += QStringView(drawing).mid(from, match.capturedStart() - from);
        from = match.capturedEnd();
        const auto role = drawingKeys().find(key);
        const auto law = drawingColoursOfLaw().find(key);
        if (role != drawingKeys().end())
            done += (role->second == Role::Ink ? ink : theme.color(role->second)).name();
        else if (law != drawingColoursOfLaw().end())
            done += law->second.name();
        else
            throw std::logic_error("a drawing holds the colour " + key.toStdString() + ", which is no key");
    }
    done += QStringView(drawing).mid(from);
    return done;
}

} // namespace strandbench
