# SPDX-License-Identifier: GPL-3.0-or-later
# The rooms and the arrows between them: the one table. A room may include and link the rooms it SEES, and only
# those; tests/tree holds every #include against the lines below.

# Each room is compiled in a few pieces of several files (a unity build): with as many small files as there are here,
# reading headers again and again is most of the work. clang-tidy wants each file by itself.
option(PIOLO_UNITY "Compile several files at once" ON)
if(PIOLO_TIDY)
  set(PIOLO_UNITY OFF)
endif()
set(CMAKE_UNITY_BUILD ${PIOLO_UNITY})
set(CMAKE_UNITY_BUILD_BATCH_SIZE 24)

add_library(piolo_flags INTERFACE)
target_compile_options(piolo_flags INTERFACE -Wall -Wextra -Wconversion -Wshadow -Werror)
if(PIOLO_UNITY)
  # In a unity build the main file is a generated one, and each unnamed namespace seems to come from a header.
  target_compile_options(piolo_flags INTERFACE -Wno-subobject-linkage)
endif()
if(PIOLO_SANITIZE)
  target_compile_options(piolo_flags INTERFACE -fsanitize=${PIOLO_SANITIZE} -fno-omit-frame-pointer)
  target_link_options(piolo_flags INTERFACE -fsanitize=${PIOLO_SANITIZE})
  target_compile_definitions(piolo_flags INTERFACE PIOLO_SANITIZED)
endif()

# Headers from outside that many files of a target need are read once for all of them. clang-tidy cannot read what
# g++ has read, and tree_headers shows that each header of ours compiles without this.
set(CMAKE_DISABLE_PRECOMPILE_HEADERS ${PIOLO_TIDY})
set(PIOLO_STANDARD_HEADERS <algorithm> <array> <memory> <optional> <string> <unordered_map> <utility> <variant> <vector>)

set(PIOLO_ROOMS "")

# Code that runs once for a key press or a picture does not need what the second level of optimisation costs to compile.
# At the first, g++ 12 takes an empty optional for one that was not initialised.
set(PIOLO_LITE $<$<CONFIG:RelWithDebInfo,Release>:-O1>;-Wno-maybe-uninitialized)

# add_room(NAME [LITE] [SEES room...] [OUTSIDE target...] [READ_ONCE header...]): one static library from all .cpp files
# below src/NAME, except those in its folder `plugin`. LITE: see PIOLO_LITE.
function(add_room NAME)
  cmake_parse_arguments(ROOM "LITE" "" "SEES;OUTSIDE;READ_ONCE" ${ARGN})
  foreach(SEEN IN LISTS ROOM_SEES)
    if(NOT SEEN IN_LIST PIOLO_ROOMS)
      message(FATAL_ERROR "src/${NAME} may not see src/${SEEN}: no room of that name comes before it in src/rooms.cmake")
    endif()
  endforeach()
  file(GLOB_RECURSE SOURCES CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/${NAME}/*.cpp)
  list(FILTER SOURCES EXCLUDE REGEX "/plugin/")
  file(GLOB_RECURSE HEADERS CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/${NAME}/*.h)
  add_library(piolo_${NAME} STATIC ${SOURCES})
  target_sources(piolo_${NAME} PUBLIC FILE_SET HEADERS BASE_DIRS ${PROJECT_SOURCE_DIR}/src FILES ${HEADERS})
  set_target_properties(piolo_${NAME} PROPERTIES VERIFY_INTERFACE_HEADER_SETS ON)
  target_include_directories(piolo_${NAME} PUBLIC ${PROJECT_SOURCE_DIR}/src)
  list(TRANSFORM ROOM_SEES PREPEND piolo_ OUTPUT_VARIABLE SEEN_TARGETS)
  target_link_libraries(piolo_${NAME} PUBLIC ${SEEN_TARGETS} ${ROOM_OUTSIDE} PRIVATE piolo_flags)
  if(ROOM_LITE)
    target_compile_options(piolo_${NAME} PRIVATE ${PIOLO_LITE})
  endif()
  if(ROOM_READ_ONCE)
    target_precompile_headers(piolo_${NAME} PRIVATE ${PIOLO_STANDARD_HEADERS} ${ROOM_READ_ONCE})
  endif()
  set(PIOLO_ROOMS ${PIOLO_ROOMS} ${NAME} PARENT_SCOPE)
endfunction()

# add_plugin(NAME OF room SOURCE file OUTSIDE library...): src/room/plugin/SOURCE becomes libpiolo_NAME.so, which the room
# loads when it first needs the libraries behind it (files/plugin.h), found by the run path of whatever program the room
# is linked into.
set(PIOLO_PLUGIN_FOLDER ${CMAKE_INSTALL_LIBDIR}/piolo)
function(add_plugin NAME)
  cmake_parse_arguments(PLUGIN "" "OF;SOURCE" "OUTSIDE" ${ARGN})
  add_library(piolo_${NAME} MODULE src/${PLUGIN_OF}/plugin/${PLUGIN_SOURCE})
  set_target_properties(piolo_${NAME} PROPERTIES LIBRARY_OUTPUT_DIRECTORY ${PIOLO_BUILT_PLUGINS})
  target_include_directories(piolo_${NAME} PRIVATE ${PROJECT_SOURCE_DIR}/src)
  target_link_libraries(piolo_${NAME} PRIVATE ${PLUGIN_OUTSIDE} piolo_flags)
  if(piolo_${PLUGIN_OF} IN_LIST PLUGIN_OUTSIDE) # what it links from the rooms stays inside it
    target_link_options(piolo_${NAME} PRIVATE -Wl,--exclude-libs,ALL)
  else()
    add_dependencies(piolo_${PLUGIN_OF} piolo_${NAME})
  endif()
  install(TARGETS piolo_${NAME} LIBRARY DESTINATION ${PIOLO_PLUGIN_FOLDER})
endfunction()

add_room(core)
add_room(text LITE SEES core OUTSIDE Qt6::Core)
set_target_properties(piolo_text PROPERTIES AUTOMOC ON)
qt_extract_metatypes(piolo_text) # models registers a type of it for QML
add_room(engine SEES core)
add_room(files SEES core)
add_room(journal SEES core files OUTSIDE nlohmann_json::nlohmann_json ZLIB::ZLIB Threads::Threads
  READ_ONCE <filesystem> <nlohmann/json.hpp>)
set_target_properties(piolo_journal PROPERTIES UNITY_BUILD_BATCH_SIZE 10) # templates over every kind and group take long
add_room(score SEES core files OUTSIDE pugixml::pugixml)
add_plugin(zip OF score SOURCE zip_functions.cpp OUTSIDE ${PIOLO_LIBZIP})
add_room(practice LITE SEES core text engine files journal score OUTSIDE Qt6::Core Threads::Threads)
set_target_properties(piolo_practice PROPERTIES AUTOMOC ON)
add_room(device SEES core engine files practice OUTSIDE Qt6::Core Qt6::Multimedia Threads::Threads)
add_plugin(midi OF device SOURCE midi_functions.cpp OUTSIDE ${PIOLO_RTMIDI})
add_room(plots LITE SEES core text OUTSIDE Qt6::Core Qt6::Gui Qt6::Svg)
add_room(drawings LITE SEES core text plots OUTSIDE Qt6::Core Qt6::Gui)
add_plugin(drawing OF drawings SOURCE drawing_functions.cpp OUTSIDE piolo_drawings)
add_room(command LITE SEES core text engine files journal score practice plots drawings OUTSIDE Qt6::Core)
# By itself, because a test puts a list with one verb more in its place.
set_source_files_properties(${PROJECT_SOURCE_DIR}/src/command/verbs/verb_list.cpp PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
add_room(pictures LITE SEES core files journal OUTSIDE Qt6::Core Qt6::Gui)
# Draws pages and decodes pictures in a process of its own; beside the plugins.
file(GLOB PIOLO_PICTURE_CHILD CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/pictures/plugin/*.cpp)
add_executable(piolo_picture_child ${PIOLO_PICTURE_CHILD})
set_target_properties(piolo_picture_child PROPERTIES OUTPUT_NAME piolo_pictures
  RUNTIME_OUTPUT_DIRECTORY ${PIOLO_BUILT_PLUGINS})
target_include_directories(piolo_picture_child SYSTEM PRIVATE ${PIOLO_POPPLER_HEADERS})
target_link_libraries(piolo_picture_child PRIVATE piolo_pictures Qt6::Core Qt6::Gui ${PIOLO_POPPLER} piolo_flags)
install(TARGETS piolo_picture_child RUNTIME DESTINATION ${PIOLO_PLUGIN_FOLDER})
add_room(models LITE SEES core text engine files journal score practice plots pictures OUTSIDE Qt6::Core Qt6::Gui Qt6::Qml Qt6::Quick
  READ_ONCE <QAbstractListModel> <QQuickItem> <QVariantMap> <QtQml/qqmlregistration.h>)
set_target_properties(piolo_models PROPERTIES AUTOMOC ON)
set_target_properties(piolo_device PROPERTIES AUTOMOC ON)

# The QML types of src/models and the screens of qml/, one module: Piolo.
file(GLOB_RECURSE PIOLO_QML CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/qml/*.qml)
foreach(FILE IN LISTS PIOLO_QML)
  get_filename_component(NAME ${FILE} NAME)
  set_source_files_properties(${FILE} PROPERTIES QT_RESOURCE_ALIAS ${NAME})
  if(NAME MATCHES "^(Theme|HelpTarget).qml$")
    set_source_files_properties(${FILE} PROPERTIES QT_QML_SINGLETON_TYPE TRUE)
  endif()
endforeach()
# A release has its screens compiled to byte code, for its first start. Other builds leave that to the cache that Qt fills
# at the first start, and are built sooner.
if(CMAKE_BUILD_TYPE STREQUAL "Release")
  set_target_properties(piolo_models PROPERTIES QT_QMLCACHEGEN_ARGUMENTS --only-bytecode)
else()
  set(PIOLO_CACHEGEN NO_CACHEGEN)
endif()
qt_add_qml_module(piolo_models URI Piolo VERSION 1.0 RESOURCE_PREFIX /qt/qml QML_FILES ${PIOLO_QML} ${PIOLO_CACHEGEN}
  DEPENDENCIES QtQuick OUTPUT_DIRECTORY ${QT_QML_OUTPUT_DIRECTORY}/Piolo)
# The registration that Qt generates includes the headers of QML types by their bare names.
file(GLOB PIOLO_MODEL_FOLDERS LIST_DIRECTORIES true ${PROJECT_SOURCE_DIR}/src/models/*)
target_include_directories(piolo_models PRIVATE ${PIOLO_MODEL_FOLDERS})
# The translations, inside the program.
file(GLOB PIOLO_LANGUAGES CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/languages/*.ts)
foreach(FILE IN LISTS PIOLO_LANGUAGES)
  get_filename_component(NAME ${FILE} NAME_WE)
  set(MADE ${PROJECT_BINARY_DIR}/languages/${NAME}.qm)
  add_custom_command(OUTPUT ${MADE} DEPENDS ${FILE} COMMAND Qt6::lrelease -silent -idbased ${FILE} -qm ${MADE} VERBATIM)
  list(APPEND PIOLO_TRANSLATIONS ${MADE})
endforeach()
file(MAKE_DIRECTORY ${PROJECT_BINARY_DIR}/languages)
qt_add_resources(piolo_text languages PREFIX /languages BASE ${PROJECT_BINARY_DIR}/languages FILES ${PIOLO_TRANSLATIONS})
# What Qt's compilers generate is not ours to hold to our warnings.
get_target_property(PIOLO_GENERATED piolo_models SOURCES)
list(FILTER PIOLO_GENERATED INCLUDE REGEX "qmltyperegistrations")
set_source_files_properties(${PIOLO_GENERATED} PROPERTIES COMPILE_OPTIONS -w)

# The window: src/app, which sees every room.
file(GLOB_RECURSE PIOLO_APP CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/app/window/*.cpp)
add_library(piolo_app STATIC ${PIOLO_APP})
set_target_properties(piolo_app PROPERTIES AUTOMOC ON)
target_link_libraries(piolo_app PUBLIC piolo_command piolo_device piolo_pictures piolo_models piolo_modelsplugin
  PRIVATE piolo_flags)
target_compile_options(piolo_app PRIVATE ${PIOLO_LITE})

# main() loads it when no verb is given, so that verbs start without Qt Quick.
add_plugin(window OF app SOURCE window_functions.cpp OUTSIDE piolo_app)
target_compile_definitions(piolo_window PRIVATE PIOLO_VERSION="${PROJECT_VERSION}")
set_target_properties(piolo_window PROPERTIES INSTALL_RPATH $ORIGIN) # it loads the other plugins
qt_add_resources(piolo_window icon PREFIX / BASE ${PROJECT_SOURCE_DIR}/src/app/window FILES ${PROJECT_SOURCE_DIR}/src/app/window/piolo.svg)

# The program: verbs, or the window.
add_executable(piolo src/app/main.cpp)
file(RELATIVE_PATH PIOLO_TO_PLUGINS ${CMAKE_INSTALL_FULL_BINDIR} ${CMAKE_INSTALL_FULL_LIBDIR}/piolo)
set_target_properties(piolo PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}
  INSTALL_RPATH $ORIGIN/${PIOLO_TO_PLUGINS})
target_link_libraries(piolo PRIVATE piolo_command piolo_flags)
add_dependencies(piolo piolo_window piolo_drawing)
install(FILES ${PROJECT_SOURCE_DIR}/src/app/window/piolo.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES ${PROJECT_SOURCE_DIR}/src/app/window/piolo.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(TARGETS piolo RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
