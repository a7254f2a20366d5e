<#-- The foot of every page but the cover. Gets: say; cover (name, maker, edition); edition.name, edition.preview. -->
<div class="foot"><table class="foot-line"><tr>
<td>${cover.maker}<#if cover.maker?has_content && cover.edition?has_content>, </#if><#if cover.edition?has_content>${say('foot.edition', cover.edition)}</#if><#if ['helper', 'record']?seq_contains((edition.name)!'')> · ${say('foot.' + edition.name)}</#if><#if (edition.preview)!false> ${say('preview.foot')}</#if></td>
<td class="right"><span class="page-number"></span>${say('foot.of')}<span class="page-count"></span></td>
</tr></table></div>
