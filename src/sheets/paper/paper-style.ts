/** Style of every paper: black on white, A4, one sheet a page, nothing by colour alone. */
export const PAPER_STYLE = `@page{size:A4;margin:0}
*{box-sizing:border-box}
html{background:#fff;color:#000}
body{margin:0;-webkit-text-size-adjust:100%}
.sheet{display:flex;flex-direction:column;width:210mm;min-height:296.8mm;max-width:100%;margin:0 auto;padding:46px;background:#fff;break-after:page;overflow-wrap:break-word}
.sheet:last-child{break-after:auto}
.sheet h1,.sheet h2,.sheet h3,.sheet p,.sheet table{margin:0}
.sheet h1,.sheet h2,.sheet h3{line-height:1.16;font-weight:400}
.serif,.serifBold{font-family:"Literata Variable",Literata,Georgia,"Times New Roman",serif;font-optical-sizing:none}
.sans,.sansBold{font-family:"Atkinson Hyperlegible Next Variable","Atkinson Hyperlegible Next",Verdana,Arial,sans-serif}
.sheet .serifBold{font-weight:600}
.sheet .sansBold{font-weight:700}
.pale{color:#333}
.row{display:flex;align-items:stretch;break-inside:avoid}
.cell{min-width:0;flex-basis:0;align-self:flex-start}
.cell.middle{align-self:center}
.picture svg{display:block;width:100%;height:100%}
.tick{display:inline-block;border:1.5px solid #000;margin-right:4px;vertical-align:-2px}
.box{border:2px solid #000}
.box.heavy{border-left-width:10px}
.box.filled{background:#000;color:#fff;-webkit-print-color-adjust:exact;print-color-adjust:exact}
.foot{margin-top:auto}
.sheet table{border-collapse:collapse;width:100%;table-layout:fixed}
.sheet th{text-align:left;padding:0 0 6px}
.sheet td{vertical-align:top;border-top:1.2px solid #000;padding:5px 0 6px}
.sheet td+td,.sheet th+th{padding-left:14px}
.sheet hr{border:0;background:#000;margin:0;width:100%;-webkit-print-color-adjust:exact;print-color-adjust:exact}
.sheet tr{break-inside:avoid}
@media screen and (max-width:820px){.sheet{padding:20px}.row{flex-wrap:wrap}.row>.cell{flex-basis:240px}}`;
