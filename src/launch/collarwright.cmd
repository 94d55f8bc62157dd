@echo off
rem Starts collarwright.jar, which lies beside this file, on Windows. A command runs for seconds, so the code is
rem compiled quickly, not thoroughly: on two processors a pack then takes little more than half the time.
rem
rem   collarwright make job.toml
setlocal
set "collarwright_java=java"
if defined JAVA_HOME set "collarwright_java=%JAVA_HOME%\bin\java"
"%collarwright_java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%~dp0collarwright.jar" %*
