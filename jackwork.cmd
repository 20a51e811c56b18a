@echo off
rem Starts Jackwork; builds it on first use. Needs a JDK, 17 or later. Without arguments it opens the page.
setlocal
set "HOME_DIR=%~dp0"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
rem Which Java it is, asked at every start: an older one would end with 1, which says that a design fails.
set "VERSION="
for /f "tokens=2,3" %%a in ('""%JAVA%" -version 2^>^&1"') do if "%%a"=="version" if not defined VERSION set "VERSION=%%~b"
set "MAJOR=0"
for /f "tokens=1 delims=.-+_" %%m in ("%VERSION%") do set "MAJOR=%%m"
if %MAJOR% LSS 17 (
  echo Jackwork needs a Java development kit, 17 or later; found: %VERSION% 1>&2
  echo Install any, say where in JAVA_HOME, and try again. 1>&2
  pause
  exit /b 3
)
if not exist "%HOME_DIR%target\jackwork.jar" (
  echo Building Jackwork, once: it fetches its libraries ... 1>&2
  pushd "%HOME_DIR%"
  call mvnw.cmd -B -q package 1>&2
  popd
  if not exist "%HOME_DIR%target\jackwork.jar" (
    echo The build failed; the lines above say why. 1>&2
    pause
    exit /b 3
  )
)
if "%~1"=="" (
  "%JAVA%" -XX:+UseSerialGC "-Djackwork.home=%HOME_DIR%." -jar "%HOME_DIR%target\jackwork.jar" open
) else (
  "%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC "-Djackwork.home=%HOME_DIR%." -jar "%HOME_DIR%target\jackwork.jar" %*
)
exit /b %ERRORLEVEL%
