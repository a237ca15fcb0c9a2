# SPDX-License-Identifier: GPL-3.0-or-later
# Most of a file's time goes into reading the same headers again. Each kind of target has them precompiled once.
# Configured with -DCMAKE_DISABLE_PRECOMPILE_HEADERS=ON every file is read by itself, so that one which lacks an
# include says so: the asan preset does that.

# strandbench_precompiled(name NEEDS library... HEADERS header...)
# The headers <header>... as precompiled for targets that name them by strandbench_use_precompiled(target name).
function(strandbench_precompiled name)
  cmake_parse_arguments(ARG "" "" "NEEDS;HEADERS" ${ARGN})
  set(source ${CMAKE_CURRENT_BINARY_DIR}/precompiled_${name}.cpp)
  file(CONFIGURE OUTPUT ${source} CONTENT "// A target needs a source to own a precompiled header.\n")
  add_library(strandbench_precompiled_${name} OBJECT ${source})
  target_include_directories(strandbench_precompiled_${name} PRIVATE
    ${PROJECT_SOURCE_DIR}/core ${PROJECT_SOURCE_DIR}/app ${PROJECT_SOURCE_DIR}/demo)
  target_link_libraries(strandbench_precompiled_${name} PRIVATE
    Qt6::Core Boost::headers tl::expected ${ARG_NEEDS} Strandbench::Flags)
  list(TRANSFORM ARG_HEADERS REPLACE "(.+)" "<\\1>")
  target_precompile_headers(strandbench_precompiled_${name} PRIVATE ${ARG_HEADERS})
endfunction()

# strandbench_use_precompiled(target name)
function(strandbench_use_precompiled target name)
  target_precompile_headers(${target} REUSE_FROM strandbench_precompiled_${name})
endfunction()

set(strandbench_headers_of_others
  algorithm array atomic cmath condition_variable deque filesystem functional map memory mutex numbers numeric optional
  random ranges set span string thread tuple unordered_map variant vector
  QCoreApplication QCryptographicHash QDateTime QDir QFile QJsonArray QJsonDocument QJsonObject QLocale QMap
  QRegularExpression QSet QStringList QUuid QVariant
  boost/units/absolute.hpp boost/units/cmath.hpp boost/units/quantity.hpp boost/units/systems/si.hpp tl/expected.hpp)
set(strandbench_headers_of_widgets
  QApplication QAbstractButton QBoxLayout QKeyEvent QPainter QPainterPath QPointer QTextDocument QThread QTimer QWidget)

strandbench_precompiled(core HEADERS ${strandbench_headers_of_others} quantity/quantity.h)
strandbench_precompiled(record HEADERS ${strandbench_headers_of_others} repair/repair.h)
