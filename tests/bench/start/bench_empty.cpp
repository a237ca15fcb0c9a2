// SPDX-License-Identifier: GPL-3.0-or-later
// An empty window, linked to the same libraries: what Qt itself costs.
#include <QApplication>
#include <QWidget>

int main(int argc, char** argv)
{
    const QApplication application(argc, argv);
    QWidget window;
    window.setFixedSize(1280, 800);
    window.show();
    return QApplication::exec();
}
