<#-- The whole plan set as one XHTML text, section by section.
     Gets: say(key, values…) for the fixed words; language; unit; paper; edition (name, prices, boxes, preview);
     sections, the templates of the edition; and for each of them what it names itself. -->
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
<#list sections as section>
<#include section>
</#list>
</body>
</html>
