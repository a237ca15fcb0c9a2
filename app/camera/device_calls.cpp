// SPDX-License-Identifier: GPL-3.0-or-later
#include "camera/device_calls.h"

#include <QCollator>
#include <QDir>

#include <fcntl.h>
#include <sys/ioctl.h>
#include <sys/mman.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QStringList videoNodes()
{
    QStringList found;
    for (const QString& name : QDir(u"/dev"_s).entryList({u"video*"_s}, QDir::System | QDir::Files))
        found << u"/dev/"_s + name;
    QCollator byNumber;
    byNumber.setNumericMode(true); // video10 after video2
    std::sort(found.begin(), found.end(), byNumber);
    return found;
}

} // namespace

DeviceCalls systemCalls()
{
    DeviceCalls calls;
    calls.nodes = videoNodes;
    calls.open = [](const char* path, int flags) { return ::open(path, flags); };
    calls.close = [](int device) { return ::close(device); };
    calls.ioctl = [](int device, unsigned long request, void* argument) { return ::ioctl(device, request, argument); };
    calls.map = [](std::size_t length, int device, off_t offset) {
        return ::mmap(nullptr, length, PROT_READ | PROT_WRITE, MAP_SHARED, device, offset);
    };
    calls.unmap = [](void* start, std::size_t length) { return ::munmap(start, length); };
    calls.poll = [](pollfd* device, int timeoutMs) { return ::poll(device, 1, timeoutMs); };
    return calls;
}

} // namespace strandbench
