// SPDX-License-Identifier: GPL-3.0-or-later
#include "roles/pin_file.h"

#include "roles/pin_hash.h"

#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <optional>
#include <thread>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr auto lockEvery = std::chrono::milliseconds(20);
constexpr qint64 longest = 4096; // bytes: a PIN's file has some two hundred
const QString hashKey = u"hash"_s;
const QString wrongKey = u"wrong"_s;
const QString whenKey = u"wrong_boottime_ms"_s;
const QString bootKey = u"wrong_boot_id"_s;

bool isWhole(const QJsonValue& value) { return value.isDouble() && value.toDouble() == double(value.toInteger()); }

ReadPin unreadable() { return {ReadPin::Is::Unreadable, {}}; }

std::optional<PinState> stateOf(const QByteArray& bytes)
{
    const QJsonObject json = QJsonDocument::fromJson(bytes).object();
    if (json.size() != 4 || !json[hashKey].isString() || !isWhole(json[wrongKey]) || !isWhole(json[whenKey]) ||
        !json[bootKey].isString())
        return std::nullopt;
    const QByteArray hash = json[hashKey].toString().toLatin1();
    const qint64 wrong = json[wrongKey].toInteger();
    const qint64 when = json[whenKey].toInteger();
    if (!isHash(hash) || wrong < 0 || wrong > mostWrong || when < 0)
        return std::nullopt;
    return PinState{hash, static_cast<int>(wrong), {0, when, json[bootKey].toString(), 0}};
}

/// The name of a file that was renamed is on the disk only once its folder is.
bool flushFolder(const QString& path)
{
    const QByteArray name = QFile::encodeName(QFileInfo(QFileInfo(path).canonicalFilePath()).path());
    const int folder = ::open(name.constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0)
        return false;
    const bool flushed = ::fsync(folder) == 0;
    ::close(folder);
    return flushed;
}

} // namespace

ReadPin readPinFile(const QString& path)
{
    struct stat there {};
    if (::lstat(QFile::encodeName(path).constData(), &there) != 0) // a folder that may not be entered is no missing PIN
        return errno == ENOENT ? ReadPin{} : unreadable();
    QFile file(path);
    if (!QFileInfo(path).isFile() || file.size() > longest || !file.open(QIODevice::ReadOnly))
        return unreadable();
    const auto state = stateOf(file.readAll());
    return state ? ReadPin{ReadPin::Is::Read, *state} : unreadable();
}

bool writePinFile(const QString& path, const PinState& state)
{
    const QJsonObject json{{hashKey, QString::fromLatin1(state.hash)},
                           {wrongKey, state.wrong},
                           {whenKey, state.lastWrong.boottimeMs},
                           {bootKey, state.lastWrong.bootId}};
    const QByteArray bytes = QJsonDocument(json).toJson();
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(QFile::ReadOwner | QFile::WriteOwner))
        return false;
    if (file.write(bytes) != bytes.size() || !file.flush() || ::fsync(file.handle()) != 0)
        return false;
    return file.commit() && flushFolder(path);
}

PinLock::PinLock(const QString& path, std::chrono::milliseconds atMost)
{
    const QByteArray name = QFile::encodeName(path + u".lock"_s);
    m_file = ::open(name.constData(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, S_IRUSR | S_IWUSR);
    const auto until = std::chrono::steady_clock::now() + atMost;
    while (m_file >= 0 && ::flock(m_file, LOCK_EX | LOCK_NB) != 0) {
        const bool another = errno == EWOULDBLOCK || errno == EINTR;
        if (another && std::chrono::steady_clock::now() < until) {
            std::this_thread::sleep_for(lockEvery);
        } else {
            ::close(m_file);
            m_file = -1;
        }
    }
}

PinLock::~PinLock()
{
    if (m_file >= 0)
        ::close(m_file);
}

} // namespace strandbench
