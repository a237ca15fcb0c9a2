// SPDX-License-Identifier: GPL-3.0-or-later
#include "whole_repair.h"

#include <QCryptographicHash>
#include <QDir>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Folds the repair itself: what a draft does not say (key, hash), the log gives.
class Drafts {
public:
    void put(const Payload& payload, const std::vector<QByteArray>& blobs = {})
    {
        Event event;
        event.origin = u"5a0c52f4-3a0e-4bb4-8a43-6a1ad3a2a0a5"_s;
        event.seq = qint64(m_all.size()) + 1;
        event.repair = m_id;
        event.person = u"Zoë Łukasz-Quist"_s;
        event.payload = payload;
        event.at = moment(30 * int(m_all.size()));
        if (apply(m_repair, event))
            throw std::runtime_error("an act does not follow: " + kindOf(payload).toStdString());
        m_all.push_back({event.repair, event.person, payload, event.at, blobs});
    }
    void photo(PhotoMoment when, const QByteArray& bytes)
    {
        put(PhotoTaken{when, QCryptographicHash::hash(bytes, QCryptographicHash::Sha256), u"image/jpeg"_s}, {bytes});
    }
    /// `bytes` of the first photo; what else is stored is smaller.
    void walk(qsizetype bytes)
    {
        put(TakenIn{u"4421"_s, u"skirt panel, right rear – lower €"_s});
        photo(PhotoMoment::AsFound, QByteArray(bytes, 'p'));
        while (m_repair.open()) {
            const Payload next = actAt(m_repair);
            if (std::holds_alternative<PlanAccepted>(next))
                put(next, {QByteArray(bytes / 13, 's'), QByteArray(bytes / 2, 't')});
            else
                put(next);
            if (m_all.size() % 20 == 0)
                put(Noted{{}, u"the same note, twice"_s});
            if (m_all.size() == 30)
                photo(PhotoMoment::Filled, QByteArray(bytes / 3, 'q'));
        }
    }
    [[nodiscard]] const std::vector<EventDraft>& all() const { return m_all; }

private:
    QUuid m_id = QUuid::createUuid();
    Repair m_repair;
    std::vector<EventDraft> m_all;
};

} // namespace

std::vector<EventDraft> wholeRepair(qsizetype bytes)
{
    Drafts drafts;
    drafts.walk(bytes);
    return drafts.all();
}

EventDraft oneMore() { return {QUuid::createUuid(), u"R. Quist"_s, TakenIn{u"next"_s, u"door"_s}, moment(90'000), {}}; }

QString quickFolderTemplate()
{
    const QString memory = u"/dev/shm"_s;
    const QFileInfo folder(memory);
    return (folder.isDir() && folder.isWritable() ? memory : QDir::tempPath()) + u"/strandbench-XXXXXX"_s;
}

QuickLogTest::QuickLogTest() : m_quick(quickFolderTemplate())
{
    if (!m_quick.isValid())
        throw std::runtime_error("no temporary folder");
}

} // namespace strandbench::test
