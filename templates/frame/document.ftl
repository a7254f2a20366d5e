<#-- The whole plan set as one XHTML text, section by section.
     Gets: say(key, values…) for the fixed words; language; unit; paper; and for each section what
     its own template names. -->
<html xmlns="http://www.w3.org/1999/xhtml" lang="${language}">
<head>
<title>${cover.name}</title>
<style type="text/css">
<#include "/style/style.ftl">
</style>
<#include "/frame/bookmarks.ftl">
</head>
<body>
<#include "/frame/foot.ftl">
<#include "/cover/page.ftl">
<#include "/before/page.ftl">
<#include "/lists/cut-list.ftl">
<#include "/lists/glue-ups.ftl">
<#include "/lists/shopping.ftl">
<#include "/lists/hardware.ftl">
<#include "/layouts/page.ftl">
<#include "/general/page.ftl">
<#include "/exploded/page.ftl">
<#include "/parts/page.ftl">
<#include "/timeline/page.ftl">
<#include "/steps/page.ftl">
<#include "/finish/page.ftl">
<#include "/fullsize/page.ftl">
</body>
</html>
