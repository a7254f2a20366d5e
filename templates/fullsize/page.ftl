<#-- The full-size templates, a sheet on each page. Gets: templates.sheets (index, title, heading,
     lead, drawing: a drawing's place, which must not be shrunk). -->
<#import "/frame/macros.ftl" as frame>
<#list templates.sheets as sheet>
<div class="${frame.sheet(sheet.drawing)}"<#if sheet?is_first> id="fullsize"</#if>>
<@frame.head say('fullsize.title')/>
<div class="full-size" id="${sheet.drawing.name}">
<div class="part-title">${sheet.heading}</div>
<p class="small"><b>${say('fullsize.caution')}</b> ${sheet.lead}</p>
<div class="picture"><@frame.drawing sheet.drawing/></div>
</div>
</div>
</#list>
